-- What no program may do to the record.
create function fayline_entry_is_kept() returns trigger language plpgsql as $$
begin
  raise exception 'fayline: an entry is never changed or removed';
end;
$$;

create trigger entry_is_kept before update or delete on entry
  for each row execute function fayline_entry_is_kept();

create trigger entry_is_never_emptied before truncate on entry
  for each statement execute function fayline_entry_is_kept();

create function fayline_entry_follows() returns trigger language plpgsql as $$
begin
  if new.seq <> (select coalesce(max(seq), 0) + 1 from entry) then
    raise exception 'fayline: the entry is out of sequence';
  end if;
  if new.previous <> coalesce((select hash from entry where seq = new.seq - 1), repeat('0', 64)) then
    raise exception 'fayline: the entry names another entry before it';
  end if;
  if exists (select 1 from entry where client_id = new.client_id) then
    raise exception 'fayline: the client id was used before';
  end if;
  return new;
end;
$$;

create trigger entry_follows_the_last before insert on entry
  for each row execute function fayline_entry_follows();
