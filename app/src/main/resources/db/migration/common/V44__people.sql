-- One row for each person, never removed and never given to another; the counters are the lock's own.
create table person (
  id ${id},
  login text not null unique,
  name text not null,
  roles text not null,
  active bigint not null,
  password text not null,
  second_factor text not null,
  failed bigint not null default 0,
  locked_until_utc text not null default '',
  last_code bigint not null default 0
);

-- A link that works once: the first administrator, a new person, a lost password.
create table invitation (
  id ${id},
  person_id bigint references person (id),
  hash text not null unique,
  expires_utc text not null,
  used_utc text not null
);

-- A key for a device or a script: kept as a hash, with no more rights than it needs.
create table api_token (
  id ${id},
  person_id bigint references person (id),
  name text not null,
  scopes text not null,
  hash text not null unique,
  created_utc text not null,
  expires_utc text not null,
  revoked_utc text not null
);
