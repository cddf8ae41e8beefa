-- What a site wrote down of the load's temperature before it left stays as it wrote it: the end of the run adds a temperature
-- only where there is none.
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
      || case when tg_table_name = 'treatment_run' and row_of.e ->> 'ended_at' is null
          and (row_of.l ->> 'ended_at')::timestamptz <= s.left_at
        then array['ended_at'] || case when row_of.e ->> 'load_celsius_at_spawning' is null
          then array['load_celsius_at_spawning'] else '{}'::text[] end
        else '{}'::text[] end
      || case when row_of.l ->> 'note' is null then array['note'] else '{}'::text[] end
      || case when row_of.l ->> 'caption' is null then array['caption'] else '{}'::text[] end as columns) as may
    where (row_of.l - may.columns) is distinct from (row_of.e - may.columns)
      or (row_of.e ->> 'voided_at' is not null and row_of.l ->> 'voided_at' is distinct from row_of.e ->> 'voided_at')
  ) then
    raise exception 'the site has left the network' using errcode = 'PB008';
  end if;
  return null;
end $$;
