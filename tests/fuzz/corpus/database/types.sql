UPDATE sample SET started_at_ms = 9223372036854775807, finished_at_ms = -9223372036854775808;
UPDATE yard SET latitude_deg = 1e999, name = x'fffe00';
