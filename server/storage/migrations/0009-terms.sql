-- The crew's own kinds, and kinds of the program under other names: follows from the ledger.
create table term (
  house_id uuid not null,
  id text not null,
  facts jsonb not null,
  said_at timestamptz(3) not null,
  said_by jsonb,
  primary key (house_id, id)
);
