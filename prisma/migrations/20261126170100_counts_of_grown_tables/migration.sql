-- A session keeps the plans of triggers and keys. Made while a table held a hundred rows, they read it through for every
-- row that comes later, and a long transaction adds a hundred thousand: tables to which the own transaction has added more
-- than twice what was counted are counted anew as well, which has such plans made again. Each is counted some ten times.
create or replace function app.mend_counts() returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare t text;
begin
  for t in select c.relname from pg_class c
    where c.relnamespace = 'public'::regnamespace
      and c.relname in ('batch', 'batch_component', 'spawn_share', 'finding', 'finding_unit', 'weighing', 'weighing_line',
        'weighing_destination', 'substrate_lot', 'spawn_lot', 'site', 'treatment_run', 'treatment_reading', 'outcome_due')
      and ((c.reltuples = 0 and c.relpages > 0)
        or pg_stat_get_xact_tuples_inserted(c.oid) > 2 * greatest(c.reltuples, 100))
    order by c.relname
  loop
    execute format('analyze (skip_locked) public.%I', t);
  end loop;
end $$;
grant maintain on public.outcome_due to pinset_definer;
