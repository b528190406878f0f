UPDATE setting SET value = 7 WHERE name = 'device_id';
DELETE FROM device;
