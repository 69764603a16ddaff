-- An entry is never changed but in one way: its payload is emptied to one fixed form where a later entry erases it, and its kind
-- is one whose text may be personal. Every other column stays. See docs/record-format.
drop trigger entry_is_never_changed;

create trigger entry_is_never_changed before update on entry
when not (
  new.payload is '{"erased":"yes"}'
  and old.payload is not new.payload
  and new.seq is old.seq
  and new.version is old.version
  and new.client_id is old.client_id
  and new.who is old.who
  and new.phone_at is old.phone_at
  and new.taken_at is old.taken_at
  and new.project is old.project
  and new.kind is old.kind
  and new.payload_hash is old.payload_hash
  and new.files is old.files
  and new.previous is old.previous
  and new.hash is old.hash
  and old.kind in ('step-noted', 'week-told', 'deviation-raised', 'finding-raised', 'finding-corrected',
    'person-admitted', 'device-paired', 'device-ended', 'corrected')
  and exists (
    select 1 from entry later
    where later.seq > old.seq and later.kind = 'erased'
      and case when later.kind = 'erased' then json_extract(later.payload, '$.entry') end = old.seq)
)
begin
  select raise(abort, 'fayline: an entry is never changed');
end;
