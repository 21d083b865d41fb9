-- Accounts. Never part of a house's ledger.
create table person (
  id text primary key,
  name text not null,
  email text not null unique,
  email_verified boolean not null default false,
  image text,
  keeper boolean not null default false,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);

create table person_session (
  id text primary key,
  token text not null unique,
  user_id text not null references person on delete cascade,
  expires_at timestamptz not null,
  ip_address text,
  user_agent text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
create index person_session_user on person_session (user_id);

create table person_credential (
  id text primary key,
  account_id text not null,
  provider_id text not null,
  user_id text not null references person on delete cascade,
  access_token text,
  refresh_token text,
  id_token text,
  access_token_expires_at timestamptz,
  refresh_token_expires_at timestamptz,
  scope text,
  password text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
create index person_credential_user on person_credential (user_id);

create table person_verification (
  id text primary key,
  identifier text not null,
  value text not null,
  expires_at timestamptz not null,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);

create table account_link (
  secret_hash bytea primary key,
  purpose text not null check (purpose in ('first-account', 'join-house')),
  email text,
  house_id uuid,
  role text,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  used_at timestamptz
);

create table access_token (
  id uuid primary key,
  person_id text not null references person on delete cascade,
  name text not null,
  secret_hash bytea not null unique,
  created_at timestamptz not null,
  last_used_at timestamptz,
  expires_at timestamptz
);

create table instance_secret (
  name text primary key,
  value text not null
);

-- The ledger: the truth about each house. The row in `ledger` is the house's lock.
create table ledger (
  house_id uuid primary key,
  size integer not null,
  frontier bytea not null,
  head bytea not null
);

create table ledger_entry (
  house_id uuid not null references ledger,
  seq integer not null,
  at timestamptz(3) not null,
  kind text not null,
  canonical text not null,
  leaf bytea not null,
  head bytea not null,
  primary key (house_id, seq)
);
create index ledger_entry_at on ledger_entry (house_id, at);

-- The projection: what screens read. Every row follows from the ledger and can be made again.
create table statement_subject (
  house_id uuid not null,
  seq integer not null,
  subject text not null,
  primary key (house_id, subject, seq)
);

create table house (
  id uuid primary key,
  name text not null,
  zone text not null,
  first_day date,
  site jsonb,
  created_at timestamptz(3) not null
);

create table house_role (
  house_id uuid not null,
  person_id text not null,
  name text not null,
  role text not null,
  primary key (house_id, person_id)
);
create index house_role_person on house_role (person_id);

create table member (
  house_id uuid not null,
  mark text not null,
  kind text not null,
  name text not null,
  place text not null,
  track text,
  note text not null,
  other jsonb not null,
  retired boolean not null,
  primary key (house_id, mark)
);

create table photo (
  id uuid primary key,
  house_id uuid not null,
  sha256 text not null,
  bytes bigint not null,
  media_type text not null,
  file_name text not null,
  width integer not null,
  height integer not null,
  readings jsonb not null,
  added_at timestamptz(3) not null,
  added_by jsonb,
  capture jsonb not null,
  captured_at timestamptz(3),
  capture_day date,
  unique (house_id, sha256)
);
create index photo_order on photo (house_id, captured_at, id);
create index photo_sha256 on photo (sha256);

create table tag (
  id uuid primary key,
  house_id uuid not null,
  photo_id uuid not null,
  mark text not null,
  stage text not null,
  region jsonb not null,
  note text not null,
  said_at timestamptz(3) not null,
  said_by jsonb,
  supersedes uuid,
  state text not null check (state in ('standing', 'superseded', 'withdrawn')),
  ended_at timestamptz(3),
  ended_by jsonb,
  end_reason text
);
create index tag_photo on tag (photo_id);
create index tag_mark on tag (house_id, mark);

create table covering (
  id uuid primary key,
  house_id uuid not null,
  name text not null,
  kind text not null,
  planned_day date,
  note text not null,
  changed_at timestamptz(3) not null,
  closed_at timestamptz(3),
  closed_by jsonb,
  close_note text
);
create index covering_house on covering (house_id);

create table covering_hides (
  covering_id uuid not null references covering on delete cascade,
  house_id uuid not null,
  mark text not null,
  least text not null,
  position integer not null,
  primary key (covering_id, mark)
);
create index covering_hides_mark on covering_hides (house_id, mark);

create table day_note (
  house_id uuid not null,
  day date not null,
  person_id text not null,
  said_by jsonb,
  said_at timestamptz(3) not null,
  text text not null,
  primary key (house_id, day, person_id)
);

-- What the machine has made of originals. Can be made again, follows from no statement.
create table picture (
  photo_id uuid primary key,
  state text not null check (state in ('ready', 'damaged', 'unreadable')),
  made_at timestamptz not null default now()
);
