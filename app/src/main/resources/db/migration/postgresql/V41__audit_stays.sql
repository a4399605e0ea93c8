-- An entry of the audit is never altered or removed.
create function audit_stays() returns trigger language plpgsql as $$
begin
  raise exception 'an entry of the audit is never altered or removed';
end;
$$;

create trigger audit_is_not_altered before update or delete on audit
for each row execute function audit_stays();

create trigger audit_is_not_truncated before truncate on audit
for each statement execute function audit_stays();

create trigger audit_head_is_not_removed before delete on audit_head
for each row execute function audit_stays();
