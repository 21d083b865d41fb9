-- Whether a stranger could read the member in the region of a tag. Measured from the original, can be made again.
create table legibility (
  tag_id uuid primary key,
  house_id uuid not null,
  -- null: the original cannot be decoded.
  measures jsonb,
  verdict text check (verdict in ('clear', 'weak', 'unreadable')),
  reasons jsonb not null,
  version integer not null
);

-- By which pictures of one scene are found, and the sharpest of them; null until looked at.
alter table picture add column hash bit(64);
alter table picture add column sharpness double precision;
