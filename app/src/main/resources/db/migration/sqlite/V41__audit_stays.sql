-- An entry of the audit is never altered or removed.
create trigger audit_is_not_altered before update on audit
begin
  select raise(abort, 'an entry of the audit is never altered');
end;

create trigger audit_is_not_removed before delete on audit
begin
  select raise(abort, 'an entry of the audit is never removed');
end;

create trigger audit_head_is_not_removed before delete on audit_head
begin
  select raise(abort, 'the head of the audit is never removed');
end;
