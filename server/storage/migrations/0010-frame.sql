-- The frame in space: the grid, where members lie, what zones hide, and which part of a member a tag shows.
alter table house add column grid jsonb;
alter table house add column requirements jsonb not null default '[]';
alter table member add column set_out jsonb;
alter table tag add column stretch jsonb;
alter table covering add column zone jsonb;
alter table covering add column except_marks jsonb not null default '[]';
-- null: the whole member; by_zone: computed, not listed by hand.
alter table covering_hides add column stretch jsonb;
alter table covering_hides add column views integer not null default 1;
alter table covering_hides add column by_zone boolean not null default false;
