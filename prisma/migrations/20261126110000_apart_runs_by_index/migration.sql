-- Runs that reach over several sums are counted from their batches at each reading: from an index that holds all that
-- asks, ten times faster than from the table, where each lies on a page of its own.
drop index public.batch_outcome_apart;
create index "batch_outcome_apart" on public.batch_outcome("network_id", "container", "inoculated_on")
  include ("species_id", "site_id", "material_key", "method_key", "run_ids", "contamination_class", "contamination_enters_on",
    "yield_class", "yield_enters_on", "fresh_grams", "fresh_grams_by_yield_day", "life_class") where apart;

-- As before, now under the lock of the network, as all who write its sums: a writer between the two halves would have been
-- added to totals that were then worked out of sums that held it already. Whoever holds the lock may take it again.
create or replace function app.rebuild_totals(of_network uuid) returns void
  language plpgsql volatile security definer set search_path = public, pg_temp set jit = off as $$
begin
  perform pg_advisory_xact_lock(hashtextextended('outcomes of ' || of_network, 0));
  delete from outcome_site_total where network_id = of_network;
  delete from outcome_network_total where network_id = of_network;
  insert into outcome_network_total
  select s.network_id, s.span, s.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class,
    sum(s.batches)::int, sum(s.units)::bigint, sum(s.runs)::int, sum(s.run_missing)::int, sum(s.trimmed)::int, sum(s.as_picked)::int,
    sum(s.dry_assumed)::int, sum(s.shared)::int
  from outcome_summary s where s.network_id = of_network
  group by s.network_id, s.span, s.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class;
  insert into outcome_site_total
  select t.* from (select s.site_id, s.span, array_agg(distinct s.starts_on) as starts
    from outcome_summary s where s.network_id = of_network group by s.site_id, s.span) b
  cross join lateral app.site_totals_of(of_network, b.span, array_fill(b.site_id, array[cardinality(b.starts)]), b.starts) t;
end $$;
