-- What contradicts a photo's capture time: follows from the ledger, filled by the rebuild below.
alter table photo add column doubt text check (doubt in ('before-first-day', 'after-upload'));

-- Who made the link: the ledger names that person when somebody takes the role.
alter table account_link add column made_by jsonb;

-- By which version of the projection the tables were made; a lower one than the program's is rebuilt at the start.
create table projection_version (
  sole boolean primary key default true check (sole),
  version integer not null
);
insert into projection_version (version) values (1);
