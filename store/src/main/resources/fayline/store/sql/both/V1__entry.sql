-- The record: one row per entry, added at the end and never changed. See docs/record-format.
create table entry (
  seq bigint not null primary key,
  version integer not null,
  client_id varchar(64) not null unique,
  who varchar(200) not null,
  phone_at varchar(40) not null,
  taken_at varchar(40) not null,
  project varchar(64) not null,
  kind varchar(64) not null,
  payload text not null,
  payload_hash varchar(64) not null,
  files text not null,
  previous varchar(64) not null,
  hash varchar(64) not null
);
