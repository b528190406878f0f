INSERT INTO setting SELECT 'a' || name, zeroblob(1000) FROM setting;
INSERT INTO waiting(record_id, kind) VALUES ('x', 'yard'), ('019eca82-5680-7000-8000-000000000001', 'nothing');
