UPDATE backup_note SET value = 'x' WHERE name = 'made_at_ms';
DELETE FROM backup_note WHERE name = 'sha256';
