-- What people noted about a run, and files they put with it. Neither is ever deleted: what was wrong
-- is withdrawn and stays readable. A note in a log whose start nobody knows has seconds since its
-- first row, all others have a time.
create table note (
  id integer primary key not null,
  run_id integer not null references run (id),
  at_utc text,
  at_s double precision,
  text text not null,
  author text not null,
  written_utc text not null,
  withdrawn_utc text,
  check ((at_utc is null) <> (at_s is null))
);

create index note_of_run on note (run_id);

create table attachment (
  id integer primary key not null,
  run_id integer not null references run (id),
  sha256 text not null check (length(sha256) = 64),
  size_bytes integer not null check (size_bytes >= 0),
  kind text not null,
  original_name text not null,
  caption text not null,
  author text not null,
  added_utc text not null,
  withdrawn_utc text
);

create index attachment_of_run on attachment (run_id);
