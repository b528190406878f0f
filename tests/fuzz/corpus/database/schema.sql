PRAGMA user_version = 3;
DROP TABLE merge;
ALTER TABLE yard RENAME TO garden;
