PRAGMA writable_schema = 1;
UPDATE sqlite_master SET sql = 'CREATE TABLE yard(id, a GENERATED ALWAYS AS (1))' WHERE name = 'yard';
INSERT INTO sqlite_master VALUES('table','x','x',3,'CREATE TABLE x(a)');
