-- Where a photo was taken by what its file says, and where the device was that added it: both follow from the ledger.
alter table photo add column place jsonb not null
  default '{"position": null, "heading": null, "fieldOfView": null, "site": null}';
alter table photo add column device_position jsonb;
