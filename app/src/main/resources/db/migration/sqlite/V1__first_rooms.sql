-- Times are ISO 8601 UTC text; quantities are SI and say so in their names.
create table setting (
  name text primary key not null,
  value text not null
);

create table dryer (
  id integer primary key not null,
  name text not null unique,
  kind text not null check (kind in ('manifold', 'shelves', 'trays')),
  description text not null,
  plan_section text not null,
  position integer not null
);

create table product (
  id integer primary key not null,
  name text not null unique
);

create table log_file (
  id integer primary key not null,
  sha256 text not null unique check (length(sha256) = 64),
  size_bytes integer not null check (size_bytes >= 0),
  original_name text not null,
  arrived_utc text not null
);

create table plan (
  id integer primary key not null,
  title text not null,
  yaml text not null,
  saved_utc text not null
);

create table run (
  id integer primary key not null,
  title text not null,
  dryer_id integer not null references dryer (id),
  log_file_id integer unique references log_file (id),
  plan_id integer references plan (id),
  critical_temperature_K real check (critical_temperature_K > 0),
  started_utc text,
  added_utc text not null
);

create index run_of_dryer on run (dryer_id, started_utc);
