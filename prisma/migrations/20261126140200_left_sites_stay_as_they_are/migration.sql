-- What a site recorded stays as it was when the site left: nothing is closed, reopened, corrected or moved any more. What still
-- may be done is what takes away: voiding with the reason, and what those in the records may ask for (a consent taken back, an
-- erasure). Days of judgement follow the network's windows, also where a site has left.

create index site_left on public.site (network_id, id) where left_at is not null;

-- Arguments: columns of the table that may change besides. No lock of the site is taken: the rows are locked already, and who
-- leaves holds the site's lock while waiting for them; a change that is committed beside the leaving is one made before it.
create function app.keep_left_site() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare free text[] := array['revision', 'voided_at', 'void_reason'] || tg_argv;
begin
  if not exists (select 1 from public.site s where s.left_at is not null) then
    return null;
  end if;
  if exists (
    select 1 from earlier e join later l on l.network_id = e.network_id and l.id = e.id
    join public.site s on s.network_id = e.network_id and s.id in (e.site_id, l.site_id) and s.left_at is not null
    cross join lateral (select to_jsonb(e) as e, to_jsonb(l) as l) as row_of
    where (row_of.l - free) is distinct from (row_of.e - free)
      or (row_of.e ->> 'voided_at' is not null and row_of.l ->> 'voided_at' is distinct from row_of.e ->> 'voided_at')
  ) then
    raise exception 'the site has left the network' using errcode = 'PB008';
  end if;
  return null;
end $$;
alter function app.keep_left_site() owner to pinset_definer;
revoke execute on function app.keep_left_site() from public;

do $$
declare t text; besides text;
begin
  for t in select c.relname from pg_class c join pg_trigger g on g.tgrelid = c.oid and g.tgname = 'refuse_left_site'
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
  loop
    besides := case t
      when 'batch' then '''contamination_assessed_on'', ''yield_assessed_on'''
      when 'participant' then '''counted_on'', ''named_on'', ''pictured_on'', ''erased_at'''
      else '' end;
    execute format('create trigger keep_left_site after update on public.%I referencing old table as earlier new table as later
      for each statement execute function app.keep_left_site(%s)', t, besides);
  end loop;
end $$;
