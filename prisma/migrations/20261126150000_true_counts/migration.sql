-- How many rows the planner believes a table to have. A check of a table that is brought in writes its rows and takes them
-- back; cleaned up while the same rows are being added, the table counts as empty however large it is, and each key is then
-- looked up by reading all of it. Whoever writes many rows has such tables counted anew: the rows of the own transaction
-- count, and until it ends nobody counts them away.
create function app.mend_counts() returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare t text;
begin
  for t in select c.relname from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.reltuples = 0 and c.relpages > 0
      and c.relname in ('batch', 'batch_component', 'spawn_share', 'finding', 'finding_unit', 'weighing', 'weighing_line',
        'weighing_destination', 'substrate_lot', 'spawn_lot')
    order by c.relname
  loop
    execute format('analyze (skip_locked) public.%I', t);
  end loop;
end $$;
grant maintain on public.batch, public.batch_component, public.spawn_share, public.finding, public.finding_unit, public.weighing,
  public.weighing_line, public.weighing_destination, public.substrate_lot, public.spawn_lot to pinset_definer;
alter function app.mend_counts() owner to pinset_definer;
revoke execute on function app.mend_counts() from public;
grant execute on function app.mend_counts() to pinset_app, pinset_definer;
