-- Figures of a dryer's health, one per run and figure; computed from logs, so they can be again.
create table care_figure (
  dryer_id bigint not null references dryer (id),
  run_key text not null,
  run_title text not null,
  at_utc text not null,
  figure text not null,
  value_si double precision not null,
  primary key (dryer_id, run_key, figure)
);

-- What is to be done to a dryer again and again, at intervals the laboratory sets; 0 means unused.
create table care_task (
  id text primary key not null,
  dryer_id bigint not null references dryer (id),
  name text not null,
  last_utc text not null,
  every_days double precision not null check (every_days >= 0),
  running_hours double precision not null check (running_hours >= 0)
);

-- Who used a dryer for how long.
create table machine_use (
  run_key text primary key not null,
  dryer_id bigint not null references dryer (id),
  run_title text not null,
  group_name text not null,
  started_utc text not null,
  hours double precision not null check (hours >= 0)
);

-- What was predicted before a run, and what happened.
create table prediction (
  run_key text primary key not null,
  dryer_id bigint not null references dryer (id),
  run_title text not null,
  product text not null,
  started_utc text not null,
  predicted_s double precision not null check (predicted_s > 0),
  low_s double precision not null,
  high_s double precision not null,
  actual_s double precision not null check (actual_s > 0),
  recipe_s double precision not null check (recipe_s > 0)
);
