-- Secret addresses of calendars: one a person and house, ended with the role.
create table calendar_link (
  house_id uuid not null,
  person_id text not null references person on delete cascade,
  lang text not null,
  secret_hash bytea not null unique,
  created_at timestamptz(3) not null,
  last_read_at timestamptz(3),
  primary key (house_id, person_id)
);

-- What a calendar last said of a covering, and since when: no part of the record.
create table calendar_entry (
  covering_id uuid primary key,
  house_id uuid not null,
  day date not null,
  content text not null,
  changed_at timestamptz(3) not null
);
create index calendar_entry_house on calendar_entry (house_id);
