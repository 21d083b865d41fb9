-- Temporary protection: what it lies over, from when until when. What was withdrawn stays, so that its id is not used again.
create table protection (
  id uuid primary key,
  house_id uuid not null,
  name text not null,
  what text not null,
  zone jsonb,
  except_marks jsonb not null,
  laid_at timestamptz(3) not null,
  laid_by jsonb,
  lifting_day date,
  note text not null,
  changed_at timestamptz(3) not null,
  lifted_at timestamptz(3),
  lifted_by jsonb,
  lift_note text,
  withdrawn_at timestamptz(3),
  withdrawn_by jsonb,
  withdraw_reason text
);
create index protection_house on protection (house_id);

-- stretch null: the whole member; by_zone: computed, not listed by hand.
create table protection_hides (
  protection_id uuid not null references protection on delete cascade,
  house_id uuid not null,
  mark text not null,
  stretch jsonb,
  by_zone boolean not null,
  position integer not null,
  primary key (protection_id, mark)
);
create index protection_hides_mark on protection_hides (house_id, mark);
