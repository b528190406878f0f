INSERT INTO revision(record_id, kind, field, stamp, value) SELECT id, 'yard', 'turn_day', '0000019eca825680-00000000-x', '99-99' FROM yard;
