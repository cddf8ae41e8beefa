-- Every insert and update of a network's row leaves a line of history, written by the database: who and why come
-- from transaction settings, when from the server. The application has no right to write here.

create function app.write_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  new_row jsonb := to_jsonb(new);
  old_row jsonb := case when tg_op = 'UPDATE' then to_jsonb(old) end;
  changed_old jsonb;
  changed_new jsonb;
begin
  if tg_op = 'UPDATE' then
    select jsonb_object_agg(o.key, o.value), jsonb_object_agg(o.key, n.value) into changed_old, changed_new
      from jsonb_each(old_row) o join jsonb_each(new_row) n on n.key = o.key
      where o.value is distinct from n.value and o.key <> 'revision';
    if changed_new is null then
      return null;
    end if;
  else
    changed_new := jsonb_strip_nulls(new_row);
  end if;
  insert into public.history (network_id, person_id, site_id, table_name, record_id, action, old_values, new_values, reason, origin)
  values (
    coalesce((new_row ->> 'network_id')::uuid, (new_row ->> 'id')::uuid),
    app.person_id(),
    case when tg_table_name = 'site' then (new_row ->> 'id')::uuid else (new_row ->> 'site_id')::uuid end,
    tg_table_name,
    (new_row ->> 'id')::uuid,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    changed_old,
    changed_new,
    nullif(current_setting('app.reason', true), ''),
    nullif(current_setting('app.origin', true), '')
  );
  return null;
end $$;
alter function app.write_history() owner to pinset_definer;

-- Identity never changes, and each change raises the revision by which two editors notice each other.
create function app.keep_identity() returns trigger language plpgsql as $$
begin
  if (to_jsonb(new) ->> 'network_id') is distinct from (to_jsonb(old) ->> 'network_id')
     or new.id is distinct from old.id or new.created_at is distinct from old.created_at then
    raise exception 'identity of a record cannot change' using errcode = 'PB001';
  end if;
  new.revision := old.revision + 1;
  return new;
end $$;

-- A tokens' hash is a secret even in history.
create function app.write_invitation_history() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
begin
  insert into public.history (network_id, person_id, table_name, record_id, action, new_values, reason)
  values (new.network_id, app.person_id(), 'invitation', new.id,
    (case tg_op when 'INSERT' then 'created' else 'changed' end)::public.history_action,
    jsonb_strip_nulls(to_jsonb(new) - 'token_hash' - 'for_name'), nullif(current_setting('app.reason', true), ''));
  return null;
end $$;
alter function app.write_invitation_history() owner to pinset_definer;

do $$
declare t text;
begin
  for t in
    select c.relname from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind = 'r'
      and c.relname not in ('_prisma_migrations', 'person', 'person_contact', 'account', 'session', 'setup_link', 'history')
  loop
    execute format('create trigger keep_identity before update on public.%I for each row execute function app.keep_identity()', t);
    execute format('create trigger write_history after insert or update on public.%I for each row execute function app.%I()', t,
      case when t = 'invitation' then 'write_invitation_history' else 'write_history' end);
  end loop;
end $$;
