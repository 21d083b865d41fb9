-- The hold before a covering closes, releases, and tags that are disputed.
alter table covering
  add column hold_state text not null default 'planned',
  add column hold_at timestamptz(3),
  add column hold_by jsonb,
  add column hold_note text,
  add column hold_lacking jsonb not null default '[]',
  add column release_id uuid,
  add column closed_release uuid,
  add column closed_without text;

-- What was released stays, also when it was taken back.
create table release (
  id uuid primary key,
  house_id uuid not null,
  covering_id uuid not null,
  seq integer not null,
  said_at timestamptz(3) not null,
  said_by jsonb,
  facts jsonb not null,
  withdrawn_at timestamptz(3),
  withdrawn_by jsonb,
  withdraw_reason text
);
create index release_house on release (house_id);

alter table tag
  add column disputed_at timestamptz(3),
  add column disputed_by jsonb,
  add column dispute_reason text;

alter table house add column four_eyes boolean not null default true;
