-- One-time links that are listed and can be ended; those for a new password name whose.
alter table account_link add column id uuid not null default gen_random_uuid() unique;
alter table account_link add column person_id text references person on delete cascade;
alter table account_link drop constraint account_link_purpose_check;
alter table account_link add constraint account_link_purpose_check
  check (purpose in ('first-account', 'join-house', 'new-password'));

-- Who may read one covering or one member without an account. The ledger says all of it but the secret.
create table guest (
  id uuid primary key,
  house_id uuid not null,
  covering_id uuid,
  mark text,
  label text not null,
  until timestamptz(3) not null,
  admitted_at timestamptz(3) not null,
  admitted_by jsonb,
  ended_at timestamptz(3),
  ended_by jsonb,
  end_reason text,
  check ((covering_id is null) <> (mark is null))
);
create index guest_house on guest (house_id);

-- Beside the ledger, as all that opens something.
create table guest_secret (
  secret_hash bytea primary key,
  guest_id uuid not null,
  last_used_at timestamptz
);
create index guest_secret_guest on guest_secret (guest_id);
