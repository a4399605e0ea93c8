-- Samples as they arrived, in the unit they were written in, packed block by block.
create table series (
  id ${id},
  run_id bigint not null references run (id),
  channel text not null,
  unit text not null,
  unique (run_id, channel)
);

-- Each block holds the hash of the one before it; only the last block of a series still grows.
create table series_block (
  series_id bigint not null references series (id),
  position bigint not null,
  samples bigint not null check (samples > 0),
  first_ms bigint not null,
  last_ms bigint not null,
  packed ${bytes} not null,
  hash text not null,
  primary key (series_id, position)
);
