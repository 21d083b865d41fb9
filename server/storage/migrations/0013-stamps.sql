-- Houses whose last request for a time stamp brought none. Stamps themselves are in the ledger.
create table stamp_trouble (
  house_id uuid primary key,
  at timestamptz(3) not null,
  reason text not null
);
