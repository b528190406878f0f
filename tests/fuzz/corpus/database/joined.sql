UPDATE yard SET same_as = id;
INSERT INTO joined(id, kind, into_id) SELECT id, 'yard', id FROM yard;
