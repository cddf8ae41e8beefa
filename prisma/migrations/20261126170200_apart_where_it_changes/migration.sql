-- Only batches whose mark is to change are told. Whoever asks joins them with the table by its key, and in the transaction
-- that first fills the table the planner believes it to hold a handful of rows and reads all of it for each: a table of
-- 5,000 batches compared 25 million pairs as it was committed, one of 100,000 had not ended after 25 minutes.
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
  ), marks as (
    select m.batch_id, m.apart as marked, cardinality(m.run_ids) > 1
      or (cardinality(m.run_ids) = 1 and exists (select from broken where broken.run = m.run_ids[1])) as apart
    from mates m where cardinality(m.run_ids) <> 1 or m.run_ids[1] = any (runs)
  )
  select k.batch_id, k.apart from marks k where k.apart <> k.marked
$$;
