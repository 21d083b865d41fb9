-- How often a picture of the house was finished: whoever cannot hear of it asks whether this has grown.
create table pictures_made (
  house_id uuid primary key,
  made integer not null
);
