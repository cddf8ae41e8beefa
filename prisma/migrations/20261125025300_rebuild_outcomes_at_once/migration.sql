-- Rebuilding goes table by table and not batch by batch, with fresh statistics between, so that a million batches take
-- minutes; and whether a run reaches further is worked out once, not once for each of its batches.

create or replace function app.apart_of(of_network uuid, batches uuid[], runs uuid[]) returns table (batch_id uuid, apart boolean)
  language sql stable set search_path = public, pg_temp as $$
  with mates as materialized (
    select o.* from (
      select unnest(batches) as id union
      select c.batch_id from unnest(runs) r (run)
        join batch_component c on c.network_id = of_network and c.treatment_run_id = r.run and c.voided_at is null) wanted
    cross join lateral (select x.* from batch_outcome x where x.network_id = of_network and x.batch_id = wanted.id offset 0) o
  ), broken as materialized (
    select r.run from mates m cross join lateral unnest(m.run_ids) r (run) group by r.run
    having max(cardinality(m.run_ids)) > 1
      or count(distinct (m.site_id, m.container, m.species_id, m.material_key, m.method_key, date_trunc('quarter', m.inoculated_on),
        m.contamination_enters_on, m.yield_enters_on)) > 1
  )
  select m.batch_id, cardinality(m.run_ids) > 1
    or (cardinality(m.run_ids) = 1 and exists (select from broken where broken.run = m.run_ids[1]))
  from mates m where cardinality(m.run_ids) <> 1 or m.run_ids[1] = any (runs)
$$;

grant maintain on public.batch_outcome, public.outcome_summary to pinset_definer;

create or replace function app.rebuild_outcomes(of_network uuid) returns void
  language plpgsql security definer set search_path = public, pg_temp set jit = off as $$
declare own uuid[];
begin
  perform pg_advisory_xact_lock(hashtextextended('outcomes of ' || of_network, 0));
  delete from outcome_summary where network_id = of_network;
  delete from batch_outcome where network_id = of_network;
  for own in select array_agg(id) from batch where network_id = of_network group by site_id loop
    insert into batch_outcome select * from app.outcomes_of(of_network, own);
  end loop;
  analyze batch_outcome;
  with broken as materialized (
    select r.run from batch_outcome o cross join lateral unnest(o.run_ids) r (run) where o.network_id = of_network group by r.run
    having max(cardinality(o.run_ids)) > 1
      or count(distinct (o.site_id, o.container, o.species_id, o.material_key, o.method_key, date_trunc('quarter', o.inoculated_on),
        o.contamination_enters_on, o.yield_enters_on)) > 1
  )
  update batch_outcome o set apart = true
  where o.network_id = of_network and (cardinality(o.run_ids) > 1
    or (cardinality(o.run_ids) = 1 and o.run_ids[1] in (select run from broken)));
  insert into outcome_summary
  select s.* from (select o.site_id, array_agg(distinct date_trunc('quarter', o.inoculated_on)::date) as quarters
    from batch_outcome o where o.network_id = of_network group by o.site_id) b
  cross join lateral app.quarters_of(of_network, array_fill(b.site_id, array[cardinality(b.quarters)]), b.quarters) s;
  analyze outcome_summary;
  insert into outcome_summary
  select s.* from (select o.site_id, array_agg(distinct date_trunc('year', o.starts_on)::date) as years
    from outcome_summary o where o.network_id = of_network and o.span = 'quarter' group by o.site_id) b
  cross join lateral app.years_of(of_network, array_fill(b.site_id, array[cardinality(b.years)]), b.years) s;
  analyze outcome_summary;
end $$;
