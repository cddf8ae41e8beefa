-- Coarser sums of the kept ones, for what a comparison opens on: of each site without telling materials apart, all
-- measures in one row, and of the whole network without telling sites apart. The first give the figures and, a site
-- being the cluster of their intervals, the intervals, too; the second what is said beside them. A finer question is
-- answered from outcome_summary as before.

create table public.outcome_site_total (
    "network_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "span" TEXT NOT NULL,
    "starts_on" DATE NOT NULL,
    "container" TEXT NOT NULL,
    "species_id" UUID NOT NULL,
    "method_key" TEXT NOT NULL,
    "batches" INTEGER NOT NULL,
    "contamination_batches" INTEGER NOT NULL,
    "contamination_units" BIGINT NOT NULL,
    "contaminated" BIGINT NOT NULL,
    "contaminated_later" BIGINT NOT NULL,
    "lost_clean" BIGINT NOT NULL,
    "yield_batches" INTEGER NOT NULL,
    "yield_units" BIGINT NOT NULL,
    "fresh" BIGINT NOT NULL,
    "yield_over" BIGINT NOT NULL,
    "fresh_later" BIGINT NOT NULL,
    "open_units" BIGINT NOT NULL,
    "open_unit_days" BIGINT NOT NULL,
    "cropped_batches" INTEGER NOT NULL,
    "cropped_units" BIGINT NOT NULL,
    "cropped_over" BIGINT NOT NULL,
    "cropped_later" BIGINT NOT NULL,
    "cropped_open_units" BIGINT NOT NULL,
    "cropped_open_unit_days" BIGINT NOT NULL,
    "life_batches" INTEGER NOT NULL,
    "life_units" BIGINT NOT NULL,
    "life_fresh" BIGINT NOT NULL,
    "life_dry" BIGINT NOT NULL,

    CONSTRAINT "outcome_site_total_pkey" PRIMARY KEY ("network_id","site_id","span","starts_on","container","species_id","method_key")
);
create index "outcome_site_total_network_id_container_span_starts_on_spec_idx" on public.outcome_site_total("network_id", "container", "span", "starts_on", "species_id");
alter table public.outcome_site_total add constraint "outcome_site_total_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

create table public.outcome_network_total (
    "network_id" UUID NOT NULL,
    "span" TEXT NOT NULL,
    "starts_on" DATE NOT NULL,
    "container" TEXT NOT NULL,
    "species_id" UUID NOT NULL,
    "material_key" TEXT NOT NULL,
    "method_key" TEXT NOT NULL,
    "measure" TEXT NOT NULL,
    "class" TEXT NOT NULL,
    "batches" INTEGER NOT NULL,
    "units" BIGINT NOT NULL,
    "runs" INTEGER NOT NULL,
    "run_missing" INTEGER NOT NULL,
    "trimmed" INTEGER NOT NULL,
    "as_picked" INTEGER NOT NULL,
    "dry_assumed" INTEGER NOT NULL,
    "shared" INTEGER NOT NULL,

    CONSTRAINT "outcome_network_total_pkey" PRIMARY KEY ("network_id","span","starts_on","container","species_id","material_key","method_key","measure","class")
);
alter table public.outcome_network_total add constraint "outcome_network_total_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

grant select on public.outcome_site_total, public.outcome_network_total to pinset_app;
grant select, insert, update, delete, maintain on public.outcome_site_total, public.outcome_network_total to pinset_definer;
do $$
declare t text;
begin
  foreach t in array array['outcome_site_total', 'outcome_network_total'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    execute format($p$create policy coordinator_read on public.%I for select to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
  end loop;
end $$;

-- The totals of blocks of sites, out of their sums.
create function app.site_totals_of(of_network uuid, of_span text, sites uuid[], starts date[]) returns setof public.outcome_site_total
  language sql stable set search_path = public, pg_temp as $$
  select s.network_id, s.site_id, s.span, s.starts_on, s.container, s.species_id, s.method_key,
    coalesce(sum(s.batches) filter (where s.measure = 'contamination'), 0)::int,
    coalesce(sum(s.batches) filter (where s.measure = 'contamination' and s.class = 'counted'), 0)::int,
    coalesce(sum(s.units) filter (where s.measure = 'contamination' and s.class = 'counted'), 0)::bigint,
    coalesce(sum(s.numerator) filter (where s.measure = 'contamination'), 0)::bigint,
    coalesce(sum(s.later) filter (where s.measure = 'contamination'), 0)::bigint,
    coalesce(sum(s.lost_clean) filter (where s.measure = 'contamination'), 0)::bigint,
    coalesce(sum(s.batches) filter (where s.measure = 'yield' and s.class = 'counted'), 0)::int,
    coalesce(sum(s.units) filter (where s.measure = 'yield' and s.class = 'counted'), 0)::bigint,
    coalesce(sum(s.numerator) filter (where s.measure = 'yield'), 0)::bigint,
    coalesce(sum(s.denominator) filter (where s.measure = 'yield'), 0)::bigint,
    coalesce(sum(s.later) filter (where s.measure = 'yield'), 0)::bigint,
    coalesce(sum(s.open_units) filter (where s.measure = 'yield'), 0)::bigint,
    coalesce(sum(s.open_unit_days) filter (where s.measure = 'yield'), 0)::bigint,
    coalesce(sum(s.batches) filter (where s.measure = 'cropped'), 0)::int,
    coalesce(sum(s.units) filter (where s.measure = 'cropped'), 0)::bigint,
    coalesce(sum(s.denominator) filter (where s.measure = 'cropped'), 0)::bigint,
    coalesce(sum(s.later) filter (where s.measure = 'cropped'), 0)::bigint,
    coalesce(sum(s.open_units) filter (where s.measure = 'cropped'), 0)::bigint,
    coalesce(sum(s.open_unit_days) filter (where s.measure = 'cropped'), 0)::bigint,
    coalesce(sum(s.batches) filter (where s.measure = 'life' and s.class = 'counted'), 0)::int,
    coalesce(sum(s.units) filter (where s.measure = 'life' and s.class = 'counted'), 0)::bigint,
    coalesce(sum(s.numerator) filter (where s.measure = 'life'), 0)::bigint,
    coalesce(sum(s.denominator) filter (where s.measure = 'life'), 0)::bigint
  from unnest(sites, starts) b (site_id, starts_on)
  join outcome_summary s on s.network_id = of_network and s.site_id = b.site_id and s.span = of_span and s.starts_on = b.starts_on
  group by s.network_id, s.site_id, s.span, s.starts_on, s.container, s.species_id, s.method_key
$$;

create function app.keep_site_totals(of_network uuid, of_span text, sites uuid[], starts date[]) returns void
  language sql volatile set search_path = public, pg_temp as $$
  with fresh as materialized (
    select * from app.site_totals_of(of_network, of_span, sites, starts)
  ), emptied as (
    delete from outcome_site_total s using unnest(sites, starts) b (site_id, starts_on)
    where s.network_id = of_network and s.site_id = b.site_id and s.span = of_span and s.starts_on = b.starts_on
      and not exists (select from fresh f where f.site_id = s.site_id and f.starts_on = s.starts_on and f.container = s.container
        and f.species_id = s.species_id and f.method_key = s.method_key)
  )
  insert into outcome_site_total as s select * from fresh
  on conflict (network_id, site_id, span, starts_on, container, species_id, method_key) do update set
    (batches, contamination_batches, contamination_units, contaminated, contaminated_later, lost_clean,
     yield_batches, yield_units, fresh, yield_over, fresh_later, open_units, open_unit_days,
     cropped_batches, cropped_units, cropped_over, cropped_later, cropped_open_units, cropped_open_unit_days,
     life_batches, life_units, life_fresh, life_dry)
    = (excluded.batches, excluded.contamination_batches, excluded.contamination_units, excluded.contaminated, excluded.contaminated_later,
     excluded.lost_clean, excluded.yield_batches, excluded.yield_units, excluded.fresh, excluded.yield_over, excluded.fresh_later,
     excluded.open_units, excluded.open_unit_days, excluded.cropped_batches, excluded.cropped_units, excluded.cropped_over,
     excluded.cropped_later, excluded.cropped_open_units, excluded.cropped_open_unit_days,
     excluded.life_batches, excluded.life_units, excluded.life_fresh, excluded.life_dry)
    where s.* is distinct from excluded.*
$$;

-- Writes the sums of blocks that differ from what they should be, and takes out those of nothing. The network's totals
-- move by what the sums moved: they span every site, so they are not worked out anew. Whole numbers, under the lock of
-- the network, in the statement that writes the sums: nothing can come between.
create or replace function app.keep_sums(of_network uuid, of_span text, sites uuid[], starts date[]) returns void
  language sql volatile set search_path = public, pg_temp as $$
  with fresh as materialized (
    select * from app.quarters_of(of_network, sites, starts) where of_span = 'quarter'
    union all select * from app.years_of(of_network, sites, starts) where of_span = 'year'
  ), emptied as (
    delete from outcome_summary s using unnest(sites, starts) b (site_id, starts_on)
    where s.network_id = of_network and s.site_id = b.site_id and s.span = of_span and s.starts_on = b.starts_on
      and not exists (select from fresh f where f.site_id = s.site_id and f.starts_on = s.starts_on and f.container = s.container
        and f.species_id = s.species_id and f.material_key = s.material_key and f.method_key = s.method_key
        and f.measure = s.measure and f.class = s.class)
    returning s.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class,
      -s.batches as batches, -s.units as units, -s.runs as runs, -s.run_missing as run_missing, -s.trimmed as trimmed,
      -s.as_picked as as_picked, -s.dry_assumed as dry_assumed, -s.shared as shared
  ), kept as (
    insert into outcome_summary as s select * from fresh
    on conflict (network_id, site_id, span, starts_on, container, species_id, material_key, method_key, measure, class) do update set
      (batches, units, numerator, denominator, later, lost_clean, open_units, open_unit_days, runs, run_missing, trimmed, as_picked, dry_assumed, shared)
      = (excluded.batches, excluded.units, excluded.numerator, excluded.denominator, excluded.later, excluded.lost_clean, excluded.open_units,
        excluded.open_unit_days, excluded.runs, excluded.run_missing, excluded.trimmed, excluded.as_picked, excluded.dry_assumed, excluded.shared)
      where s.* is distinct from excluded.*
    returning new.starts_on, new.container, new.species_id, new.material_key, new.method_key, new.measure, new.class,
      new.batches - coalesce(old.batches, 0) as batches, new.units - coalesce(old.units, 0) as units,
      new.runs - coalesce(old.runs, 0) as runs, new.run_missing - coalesce(old.run_missing, 0) as run_missing,
      new.trimmed - coalesce(old.trimmed, 0) as trimmed, new.as_picked - coalesce(old.as_picked, 0) as as_picked,
      new.dry_assumed - coalesce(old.dry_assumed, 0) as dry_assumed, new.shared - coalesce(old.shared, 0) as shared
  )
  insert into outcome_network_total as t
  select of_network, of_span, starts_on, container, species_id, material_key, method_key, measure, class,
    sum(batches)::int, sum(units)::bigint, sum(runs)::int, sum(run_missing)::int, sum(trimmed)::int, sum(as_picked)::int,
    sum(dry_assumed)::int, sum(shared)::int
  from (select * from emptied union all select * from kept) moved
  group by starts_on, container, species_id, material_key, method_key, measure, class
  having (sum(batches), sum(units), sum(runs), sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed), sum(shared))
    is distinct from (0, 0, 0, 0, 0, 0, 0, 0)
  on conflict (network_id, span, starts_on, container, species_id, material_key, method_key, measure, class) do update set
    (batches, units, runs, run_missing, trimmed, as_picked, dry_assumed, shared)
    = (t.batches + excluded.batches, t.units + excluded.units, t.runs + excluded.runs, t.run_missing + excluded.run_missing,
      t.trimmed + excluded.trimmed, t.as_picked + excluded.as_picked, t.dry_assumed + excluded.dry_assumed, t.shared + excluded.shared);
  delete from outcome_network_total t where t.network_id = of_network and t.span = of_span and t.starts_on = any (starts) and t.batches = 0;
  select app.keep_site_totals(of_network, of_span, sites, starts);
$$;

-- All totals of a network anew, out of its sums.
create function app.rebuild_totals(of_network uuid) returns void
  language sql volatile security definer set search_path = public, pg_temp set jit = off as $$
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
$$;

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
  perform app.rebuild_totals(of_network);
  analyze outcome_site_total, outcome_network_total;
end $$;

-- What differs of the totals from what the sums give; the sums themselves are held against the records.
create function app.wrong_totals(of_network uuid) returns table (what text, place text, kept jsonb, records jsonb)
  language sql stable security definer set search_path = public, pg_temp set jit = off as $$
  select 'site total', coalesce(k.site_id, f.site_id)::text, to_jsonb(k), to_jsonb(f)
  from (select * from outcome_site_total x where x.network_id = of_network) k
  full join (
    select t.* from (select s.site_id, s.span, array_agg(distinct s.starts_on) as starts
      from outcome_summary s where s.network_id = of_network group by s.site_id, s.span) b
    cross join lateral app.site_totals_of(of_network, b.span, array_fill(b.site_id, array[cardinality(b.starts)]), b.starts) t) f
    using (site_id, span, starts_on, container, species_id, method_key)
  where k is distinct from f
  union all
  select 'network total', coalesce(k.starts_on, f.starts_on)::text, to_jsonb(k), to_jsonb(f)
  from (select * from outcome_network_total x where x.network_id = of_network) k
  full join (
    select s.network_id, s.span, s.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class,
      sum(s.batches)::int as batches, sum(s.units)::bigint as units, sum(s.runs)::int as runs, sum(s.run_missing)::int as run_missing,
      sum(s.trimmed)::int as trimmed, sum(s.as_picked)::int as as_picked, sum(s.dry_assumed)::int as dry_assumed, sum(s.shared)::int as shared
    from outcome_summary s where s.network_id = of_network
    group by s.network_id, s.span, s.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class) f
    using (span, starts_on, container, species_id, material_key, method_key, measure, class)
  where to_jsonb(k) is distinct from to_jsonb(f)
$$;

do $$
declare f regprocedure;
begin
  for f in select p.oid::regprocedure from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'app' and p.proname in ('site_totals_of', 'keep_site_totals', 'rebuild_totals', 'wrong_totals')
  loop
    execute format('alter function %s owner to pinset_definer', f);
    execute format('revoke execute on function %s from public', f);
  end loop;
  execute format('grant execute on function app.rebuild_totals(uuid), app.wrong_totals(uuid) to %I', current_user);
end $$;

-- What is already kept.
select app.rebuild_totals(id) from app.network_ids() id;
