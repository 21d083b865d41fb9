-- What a named person said of a camera's clock or of a photo's time: follows from the ledger, filled by the rebuild.
create table clock_mark (
  id uuid primary key,
  house_id uuid not null,
  photo_id uuid not null,
  camera text not null,
  shown_wall text not null,
  shown_offset integer,
  true_time timestamptz(3) not null,
  within_s integer not null,
  note text not null,
  seq integer not null,
  said_at timestamptz(3) not null,
  said_by jsonb,
  withdrawn_at timestamptz(3)
);
create index clock_mark_camera on clock_mark (house_id, camera, seq);

-- The camera by which its photos are dated again; how sure the time is and by what it is known; what was said by hand.
alter table photo add column camera text;
alter table photo add column uncertainty_s double precision;
alter table photo add column dated_by text check (dated_by in ('file', 'clock-mark', 'by-hand'));
alter table photo add column by_hand jsonb;
create index photo_camera on photo (house_id, camera);
