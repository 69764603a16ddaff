-- What no program may do to the record. An id used before is refused here as well, because "insert or replace" would
-- otherwise remove the older row without asking the trigger on delete.
create trigger entry_is_never_changed before update on entry
begin
  select raise(abort, 'fayline: an entry is never changed');
end;

create trigger entry_is_never_removed before delete on entry
begin
  select raise(abort, 'fayline: an entry is never removed');
end;

create trigger entry_follows_the_last before insert on entry
begin
  select raise(abort, 'fayline: the entry is out of sequence')
    where new.seq <> (select coalesce(max(seq), 0) + 1 from entry);
  select raise(abort, 'fayline: the entry names another entry before it')
    where new.previous <> coalesce(
      (select hash from entry where seq = new.seq - 1),
      '0000000000000000000000000000000000000000000000000000000000000000');
  select raise(abort, 'fayline: the client id was used before')
    where exists (select 1 from entry where client_id = new.client_id);
end;
