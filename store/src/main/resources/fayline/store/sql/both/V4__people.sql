-- Who may enter from the shop's network. Passwords, PINs and tokens lie here as hashes alone and never in an entry; what was
-- decided about people stands in the entries. These tables cannot be rebuilt from them.
create table known_person (
  person varchar(64) not null primary key,
  name varchar(200) not null,
  role varchar(16) not null,
  password_hash varchar(300) not null,
  pin_hash varchar(300) not null
);

create table known_device (
  id varchar(36) not null primary key,
  label varchar(80) not null,
  sort varchar(16) not null,
  person varchar(64) not null,
  token_hash varchar(64) not null unique,
  paired varchar(40) not null
);

create table sign_in (
  id varchar(36) not null primary key,
  token_hash varchar(64) not null unique,
  person varchar(64) not null,
  device varchar(36) not null,
  way varchar(16) not null,
  began varchar(40) not null,
  seen varchar(40) not null
);
