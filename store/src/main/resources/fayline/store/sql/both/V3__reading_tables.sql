-- What follows from the entries, for reading: filled in the transaction of the entry, can be dropped and rebuilt.
create table record_head (
  one integer not null primary key,
  seq bigint not null,
  hash varchar(64) not null
);

create table definition_file (
  project varchar(64) not null,
  path varchar(400) not null,
  seq bigint not null,
  sha256 varchar(64) not null,
  is_binary integer not null,
  content text not null,
  primary key (project, path)
);

create table step_state (
  step varchar(300) not null primary key,
  started varchar(40) not null,
  finished varchar(40) not null,
  people text not null,
  places text not null,
  which_way text not null,
  signed varchar(200) not null,
  started_by bigint not null,
  finished_by bigint not null
);

create table step_note (
  seq bigint not null primary key,
  step varchar(300) not null,
  happened varchar(40) not null,
  who varchar(200) not null,
  content text not null
);

create table reading (
  seq bigint not null primary key,
  project varchar(64) not null,
  happened varchar(40) not null,
  who varchar(200) not null,
  kind varchar(64) not null,
  of_what varchar(300) not null,
  station varchar(64) not null,
  in_state varchar(64) not null,
  typed text not null
);

create table record_conflict (
  seq bigint not null primary key,
  other bigint not null,
  about varchar(300) not null,
  sentence text not null
);
