-- Files that entries name, each once under the SHA-256 of its bytes. With SQLite they lie in the folder files/ beside it.
create table entry_file (
  sha256 varchar(64) not null primary key,
  content bytea not null
);

create function fayline_entry_file_is_kept() returns trigger language plpgsql as $$
begin
  raise exception 'fayline: a file of an entry is never changed or removed';
end;
$$;

create trigger entry_file_is_kept before update or delete on entry_file
  for each row execute function fayline_entry_file_is_kept();

create trigger entry_file_is_never_emptied before truncate on entry_file
  for each statement execute function fayline_entry_file_is_kept();
