PRAGMA application_id = 1;
PRAGMA journal_mode = DELETE;
PRAGMA encoding = 'UTF-16';
