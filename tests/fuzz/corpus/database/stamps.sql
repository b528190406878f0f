UPDATE revision SET stamp = 'ffffffffffffffff-ffffffff-zz';
UPDATE count_event SET stamp = '', at_ms = -1;
