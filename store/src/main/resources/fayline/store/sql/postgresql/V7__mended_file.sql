-- A file whose bytes no longer fit its hash may be put again as it was; nothing else of it is ever changed.
create or replace function fayline_entry_file_is_kept() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' then
    if new.sha256 is not distinct from old.sha256
        and encode(sha256(new.content), 'hex') = old.sha256
        and encode(sha256(old.content), 'hex') <> old.sha256 then
      return new;
    end if;
  end if;
  if tg_op = 'DELETE' then
    if exists (select 1 from entry where payload = '{"erased":"yes"}' and old.sha256 = any (string_to_array(files, ' ')))
        and not exists (
          select 1 from entry
          where payload <> '{"erased":"yes"}' and kind <> 'file-saved'
            and old.sha256 = any (string_to_array(files, ' '))) then
      return old;
    end if;
  end if;
  raise exception 'fayline: a file of an entry is never changed or removed';
end;
$$;
