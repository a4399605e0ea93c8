-- Who changed what, when and why; each entry holds the hash of the one before it.
create table audit (
  id bigint primary key not null,
  at_utc text not null,
  zone text not null,
  person text not null,
  via text not null,
  action text not null,
  subject text not null,
  subject_key text not null,
  old_values text not null,
  new_values text not null,
  why text not null,
  previous text not null,
  hash text not null unique
);

create index audit_of_subject on audit (subject, subject_key, id);

-- One row: how many entries there are and the hash of the last.
create table audit_head (
  id bigint primary key not null check (id = 1),
  entries bigint not null,
  hash text not null,
  at_utc text not null
);

insert into audit_head (id, entries, hash, at_utc)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000', '');
