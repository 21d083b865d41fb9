-- The list of photos by day: counted without reading the wide rows, and read in its order.
create index photo_days on photo (house_id, capture_day desc nulls last, captured_at, id);
