-- What a site left open may still end: logs count days until they are closed, and nobody picks from a site that has left. A batch
-- may be closed by the day of leaving at the latest. And words may be taken out, never changed: a note or a caption may name
-- somebody who asks to be forgotten.
create or replace function app.keep_left_site() returns trigger
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
    cross join lateral (select free
      || case when tg_table_name = 'batch' and row_of.e ->> 'closed_on' is null
          and (row_of.l ->> 'closed_on')::date <= (s.left_at at time zone s.time_zone)::date
        then array['closed_on', 'close_reason', 'spent_destination', 'no_harvest'] else '{}'::text[] end
      || case when row_of.l ->> 'note' is null then array['note'] else '{}'::text[] end
      || case when row_of.l ->> 'caption' is null then array['caption'] else '{}'::text[] end as columns) as may
    where (row_of.l - may.columns) is distinct from (row_of.e - may.columns)
      or (row_of.e ->> 'voided_at' is not null and row_of.l ->> 'voided_at' is distinct from row_of.e ->> 'voided_at')
  ) then
    raise exception 'the site has left the network' using errcode = 'PB008';
  end if;
  return null;
end $$;
