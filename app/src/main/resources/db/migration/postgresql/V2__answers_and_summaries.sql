-- What a person answered about a file, as name=value pairs, and the last review in a line.
alter table log_file add column choices text not null default '';
alter table run add column ended_utc text;
alter table run add column worst_state text;
alter table run add column worst_text text;
