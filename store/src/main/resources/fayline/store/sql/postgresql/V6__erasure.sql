-- An entry is never changed but in one way: its payload is emptied to one fixed form where a later entry erases it, and its kind
-- is one whose text may be personal. Every other column stays. A file goes only where no entry that was not emptied names it and
-- one that was does. See docs/record-format.
create or replace function fayline_entry_is_kept() returns trigger language plpgsql as $$
begin
  if tg_op = 'UPDATE' then
    if new.payload = '{"erased":"yes"}' and old.payload <> new.payload
        and (new.seq, new.version, new.client_id, new.who, new.phone_at, new.taken_at, new.project, new.kind,
          new.payload_hash, new.files, new.previous, new.hash)
        is not distinct from (old.seq, old.version, old.client_id, old.who, old.phone_at, old.taken_at, old.project,
          old.kind, old.payload_hash, old.files, old.previous, old.hash)
        and old.kind in ('step-noted', 'week-told', 'deviation-raised', 'finding-raised', 'finding-corrected',
          'person-admitted', 'device-paired', 'device-ended', 'corrected')
        and exists (
          select 1 from entry later
          where later.seq > old.seq and later.kind = 'erased'
            and case when later.kind = 'erased' then later.payload::json ->> 'entry' end = old.seq::text) then
      return new;
    end if;
  end if;
  raise exception 'fayline: an entry is never changed or removed';
end;
$$;

create or replace function fayline_entry_file_is_kept() returns trigger language plpgsql as $$
begin
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
