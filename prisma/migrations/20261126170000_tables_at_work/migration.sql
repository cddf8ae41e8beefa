-- How many tables of the asker's network are worked on or wait for it, those out of their sight, too: whoever begins work
-- on another one must know. A job that gave no sign for so long has ended.
create function app.tables_at_work(silent interval) returns integer
  language sql stable security definer set search_path = public, pg_temp as $$
  select count(*)::int from public.intake_file f
    where f.network_id = app.network_id() and app.member_role() is not null
      and f.state in ('checking', 'adding') and f.heartbeat_at >= now() - silent
$$;
alter function app.tables_at_work(interval) owner to pinset_definer;

-- Treatments are brought in many at once as well; see 20261126150000_true_counts.
create or replace function app.mend_counts() returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare t text;
begin
  for t in select c.relname from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.reltuples = 0 and c.relpages > 0
      and c.relname in ('batch', 'batch_component', 'spawn_share', 'finding', 'finding_unit', 'weighing', 'weighing_line',
        'weighing_destination', 'substrate_lot', 'spawn_lot', 'site', 'treatment_run', 'treatment_reading')
    order by c.relname
  loop
    execute format('analyze (skip_locked) public.%I', t);
  end loop;
end $$;
grant maintain on public.site, public.treatment_run, public.treatment_reading to pinset_definer;
revoke execute on function app.tables_at_work(interval) from public;
grant execute on function app.tables_at_work(interval) to pinset_app, pinset_definer;
