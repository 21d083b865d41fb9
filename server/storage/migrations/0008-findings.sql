-- What somebody answered to a finding: follows from the ledger.
create table finding_answer (
  house_id uuid not null,
  key text not null,
  kind text not null,
  basis text not null,
  reason text not null,
  said_by jsonb,
  said_at timestamptz(3) not null,
  primary key (house_id, key)
);

-- What is to be looked at. Made of the other tables, piece by piece as they change; `scope` is what a row rests on.
create table finding (
  house_id uuid not null,
  key text not null,
  kind text not null,
  scope text not null,
  basis text not null,
  content jsonb not null,
  at timestamptz(3),
  primary key (house_id, key)
);
create index finding_scope on finding (house_id, scope);

-- The tags and the other photo of each, to find what rests on them.
create table finding_thing (
  house_id uuid not null,
  key text not null,
  thing text not null,
  primary key (house_id, key, thing),
  foreign key (house_id, key) references finding on delete cascade
);
create index finding_thing_thing on finding_thing (house_id, thing);
