-- What a comparison needs of each batch, added up as it is written: one row a batch, and sums of them by site, quarter
-- and year. Both follow from the records alone; triggers bring them up to date in the transaction of the write, so that
-- a reader never meets a figure that the records do not give. Whether a batch counts *today* is decided at each reading:
-- a sum holds batches as if their day had come, and the reader takes off those whose day lies ahead.

create table public.batch_outcome (
    "network_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "species_id" UUID NOT NULL,
    "container" TEXT NOT NULL,
    "method_id" UUID,
    "mixed_method" BOOLEAN NOT NULL,
    "second_life" BOOLEAN NOT NULL,
    "method_key" TEXT NOT NULL,
    "material_id" UUID,
    "mixed_material" BOOLEAN NOT NULL,
    "material_key" TEXT NOT NULL,
    "unit_count" INTEGER NOT NULL,
    "inoculated_on" DATE NOT NULL,
    "closed_on" DATE,
    "closed_as_lost" BOOLEAN NOT NULL,
    "no_harvest" public.no_harvest,
    "voided" BOOLEAN NOT NULL,
    "contamination_assessed_on" DATE,
    "yield_assessed_on" DATE,
    "dry_grams" INTEGER,
    "dry_assumed" BOOLEAN NOT NULL,
    "bed_area_cm2" INTEGER,
    "contaminated_by_window_end" INTEGER NOT NULL,
    "contaminated_at_any_time" INTEGER NOT NULL,
    "lost_clean" INTEGER NOT NULL,
    "last_inspected_on" DATE,
    "fresh_grams_by_yield_day" BIGINT NOT NULL,
    "fresh_grams" BIGINT NOT NULL,
    "weighings" INTEGER NOT NULL,
    "any_trimmed" BOOLEAN NOT NULL,
    "any_as_picked" BOOLEAN NOT NULL,
    "any_shared" BOOLEAN NOT NULL,
    "run_ids" UUID[],
    "run_missing" BOOLEAN NOT NULL,
    "contamination_class" TEXT NOT NULL,
    "contamination_enters_on" DATE,
    "yield_class" TEXT NOT NULL,
    "yield_enters_on" DATE,
    "life_class" TEXT,
    "apart" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "batch_outcome_pkey" PRIMARY KEY ("network_id","batch_id")
);
comment on column public.batch_outcome.container is 'the container kind as text: comparisons of an enum may not run below a row policy, those of a text may';
comment on column public.batch_outcome.apart is 'its treatment run reaches over more than one sum, so its cluster is counted batch by batch';
create index "batch_outcome_network_id_site_id_inoculated_on_idx" on public.batch_outcome("network_id", "site_id", "inoculated_on");
create index "batch_outcome_network_id_container_inoculated_on_idx" on public.batch_outcome("network_id", "container", "inoculated_on");
create index "batch_outcome_network_id_container_contamination_enters_on_idx" on public.batch_outcome("network_id", "container", "contamination_enters_on");
create index "batch_outcome_network_id_container_yield_enters_on_idx" on public.batch_outcome("network_id", "container", "yield_enters_on");
create index "batch_outcome_apart" on public.batch_outcome("network_id", "container", "inoculated_on") where apart;
alter table public.batch_outcome add constraint "batch_outcome_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.batch_outcome add constraint "batch_outcome_network_id_batch_id_fkey" foreign key ("network_id", "batch_id") references public.batch("network_id", "id") on delete restrict on update no action;

create table public.outcome_summary (
    "network_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
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
    "numerator" BIGINT NOT NULL,
    "denominator" BIGINT NOT NULL,
    "later" BIGINT NOT NULL,
    "lost_clean" BIGINT NOT NULL,
    "open_units" BIGINT NOT NULL,
    "open_unit_days" BIGINT NOT NULL,
    "runs" INTEGER NOT NULL,
    "run_missing" INTEGER NOT NULL,
    "trimmed" INTEGER NOT NULL,
    "as_picked" INTEGER NOT NULL,
    "dry_assumed" INTEGER NOT NULL,
    "shared" INTEGER NOT NULL,

    CONSTRAINT "outcome_summary_pkey" PRIMARY KEY ("network_id","site_id","span","starts_on","container","species_id","material_key","method_key","measure","class")
);
create index "outcome_summary_network_id_container_span_starts_on_species_idx" on public.outcome_summary("network_id", "container", "span", "starts_on", "species_id");
alter table public.outcome_summary add constraint "outcome_summary_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

-- Batches that a transaction has touched; emptied before it commits, so nobody ever sees a row of another's.
create table public.outcome_due (
    "network_id" UUID NOT NULL,
    "batch_id" UUID NOT NULL,
    "transaction" BIGINT NOT NULL,
    "leads" BOOLEAN NOT NULL,

    CONSTRAINT "outcome_due_pkey" PRIMARY KEY ("network_id","transaction","batch_id")
);
alter table public.outcome_due add constraint "outcome_due_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;

grant select on public.batch_outcome, public.outcome_summary, public.outcome_due to pinset_app;
grant select, insert, update, delete on public.batch_outcome, public.outcome_summary, public.outcome_due to pinset_definer;
do $$
declare t text;
begin
  foreach t in array array['batch_outcome', 'outcome_summary', 'outcome_due'] loop
    execute format('alter table public.%I enable row level security', t);
    execute format('alter table public.%I force row level security', t);
    continue when t = 'outcome_due';
    execute format($p$create policy coordinator_read on public.%I for select to pinset_app
      using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')$p$, t);
    execute format($p$create policy member_own_sites on public.%I for select to pinset_app
      using (network_id = (select app.network_id()) and site_id = any ((select app.site_ids())::uuid[]))$p$, t);
  end loop;
end $$;

-- The facts of batches from the records themselves. The rules are those of analysis/comparison/classify-contamination
-- and classify-yield with the day taken out: 'counted' here means counted once the day has come.
create function app.outcomes_of(of_network uuid, batches uuid[]) returns setof public.batch_outcome
  language sql stable set search_path = public, pg_temp as $$
  select b.network_id, b.id, b.site_id, b.species_id, b.container_kind::text,
    b.method_id, b.mixed_method, b.second_life,
    case when b.second_life then 'second-life' when b.mixed_method then 'mixed' else coalesce(b.method_id::text, 'none') end,
    b.material_id, b.mixed_material, case when b.mixed_material then 'mixed' else coalesce(b.material_id::text, 'none') end,
    b.unit_count, b.inoculated_on, b.closed_on, l.closed_as_lost, b.no_harvest, l.voided,
    b.contamination_assessed_on, b.yield_assessed_on, b.dry_grams, b.dry_assumed, b.bed_area_cm2,
    found.by_end, found.ever, lost.clean, greatest(found.last_on, looked.last_on),
    weighed.by_day, weighed.ever, weighed.times, weighed.trimmed, weighed.as_picked, weighed.shared,
    treated.runs, treated.run_missing,
    case when l.voided then 'voided' when b.contamination_assessed_on is null then 'no-window'
      when k.gone or greatest(found.last_on, looked.last_on) >= b.contamination_assessed_on then 'counted'
      else 'not-inspected' end,
    case when not l.voided then b.contamination_assessed_on end,
    case when l.voided then 'voided'
      when b.container_kind = 'log' then case when weighed.times = 0 and b.no_harvest = 'not_weighed' then 'not-weighed' else 'counted' end
      when b.yield_assessed_on is null then 'no-window'
      else coalesce(k.no_fresh, k.no_measure, 'counted') end,
    case when l.voided then null when b.container_kind = 'log' then b.inoculated_on + 365 else b.yield_assessed_on end,
    case when b.container_kind <> 'log' then null when l.voided then 'voided' when b.closed_on is null then 'log-not-finished'
      else coalesce(k.no_fresh, case when coalesce(b.dry_grams, 0) <= 0 then 'no-dry-mass' end, 'counted') end,
    false
  from unnest(batches) wanted (id)
  join batch b on b.network_id = of_network and b.id = wanted.id
  cross join lateral (select b.voided_at is not null as voided,
    coalesce(b.close_reason in ('contaminated', 'lost'), false) as closed_as_lost) l
  cross join lateral (
    select coalesce(sum(f.units) filter (where f.found_on <= b.contamination_assessed_on), 0)::int as by_end,
      coalesce(sum(f.units), 0)::int as ever, max(f.found_on) as last_on
    from finding f where f.network_id = b.network_id and f.batch_id = b.id and f.voided_at is null and not l.voided) found
  cross join lateral (
    select coalesce(sum(x.units - x.contaminated_units), 0)::int as clean
    from loss x where x.network_id = b.network_id and x.batch_id = b.id and x.voided_at is null and not l.voided) lost
  cross join lateral (
    select max(x.looked_on) as last_on
    from look x where x.network_id = b.network_id and x.batch_id = b.id and x.voided_at is null and not l.voided) looked
  cross join lateral (
    select count(*)::int as times, coalesce(sum(x.fresh_grams), 0)::bigint as ever,
      coalesce(sum(x.fresh_grams) filter (where w.weighed_on <= b.yield_assessed_on), 0)::bigint as by_day,
      coalesce(bool_or((b.container_kind = 'log' or w.weighed_on <= b.yield_assessed_on) and w.trim_state = 'trimmed'), false) as trimmed,
      coalesce(bool_or((b.container_kind = 'log' or w.weighed_on <= b.yield_assessed_on) and w.trim_state = 'as_picked'), false) as as_picked,
      coalesce(bool_or((b.container_kind = 'log' or w.weighed_on <= b.yield_assessed_on) and x.shared_weighing), false) as shared
    from weighing_line x join weighing w on w.network_id = x.network_id and w.id = x.weighing_id
    where x.network_id = b.network_id and x.batch_id = b.id and x.voided_at is null and w.voided_at is null and not l.voided) weighed
  cross join lateral (
    select coalesce(array_agg(distinct p.treatment_run_id order by p.treatment_run_id) filter (where p.treatment_run_id is not null), '{}') as runs,
      coalesce(bool_or(p.treatment_run_id is null and m.kind <> 'untreated'), false) as run_missing
    from batch_component p join method m on m.network_id = p.network_id and m.id = p.method_id
    where p.network_id = b.network_id and p.batch_id = b.id and p.voided_at is null and p.role <> 'additive' and not l.voided) treated
  cross join lateral (select found.ever + lost.clean >= b.unit_count as gone) g
  cross join lateral (select g.gone,
    case when weighed.times > 0 then null when b.no_harvest = 'not_weighed' then 'not-weighed'
      when b.no_harvest = 'none_picked' or l.closed_as_lost or g.gone then null else 'harvest-unknown' end as no_fresh,
    case when b.container_kind = 'bed' and coalesce(b.bed_area_cm2, 0) <= 0 then 'no-area'
      when b.container_kind <> 'bed' and coalesce(b.dry_grams, 0) <= 0 then 'no-dry-mass' end as no_measure) k
$$;

-- What one batch adds to each measure, as if its day had come. Logs are divided by log-days, which for open ones grow by
-- the day: units and units x day number of inoculation say how much on any day.
create view app.outcome_part with (security_invoker = true) as
  select o.network_id, o.batch_id, o.site_id, o.container, o.species_id, o.material_key, o.method_key, o.inoculated_on,
    p.measure, p.class, p.enters_on, o.unit_count as units, p.numerator, p.denominator, p.later, p.lost_clean,
    case when p.open_log then o.unit_count else 0 end as open_units,
    case when p.open_log then o.unit_count::bigint * (o.inoculated_on - date '1970-01-01') else 0 end as open_unit_days,
    o.run_missing, o.any_trimmed, o.any_as_picked, o.dry_assumed, o.any_shared, o.apart,
    coalesce(o.run_ids[1], o.batch_id) as cluster
  from public.batch_outcome o
  cross join lateral (
    select case when o.container = 'log' then o.fresh_grams else o.fresh_grams_by_yield_day end as fresh,
      case when o.container = 'log' then 0 else o.fresh_grams - o.fresh_grams_by_yield_day end as later,
      case when o.container = 'bed' then o.bed_area_cm2::bigint when o.container <> 'log' then o.dry_grams::bigint
        when o.closed_on is null then 0
        else o.unit_count::bigint * greatest(365, o.closed_on - o.inoculated_on) end as over,
      o.container = 'log' and o.closed_on is null as open_log) y
  cross join lateral (values
    ('contamination', o.contamination_class, o.contamination_enters_on, o.contaminated_by_window_end::bigint, o.unit_count::bigint,
      (o.contaminated_at_any_time - o.contaminated_by_window_end)::bigint, o.lost_clean::bigint, false),
    ('yield', o.yield_class, o.yield_enters_on, y.fresh, y.over, y.later, 0::bigint, y.open_log),
    ('cropped', case when o.yield_class = 'counted' and y.fresh > 0 then 'counted' end, o.yield_enters_on, y.fresh, y.over, y.later, 0::bigint, y.open_log),
    ('life', o.life_class, null::date, o.fresh_grams, o.dry_grams::bigint, 0::bigint, 0::bigint, false)
  ) p (measure, class, enters_on, numerator, denominator, later, lost_clean, open_log)
  where p.class is not null;
grant select on app.outcome_part to pinset_app, pinset_definer;

-- The sums of whole quarters of sites, from the batches' own rows.
create function app.quarters_of(of_network uuid, sites uuid[], quarters date[]) returns setof public.outcome_summary
  language sql stable set search_path = public, pg_temp as $$
  select p.network_id, p.site_id, 'quarter', q.starts_on, p.container, p.species_id, p.material_key, p.method_key, p.measure, p.class,
    count(*)::int, sum(p.units)::bigint,
    case p.class when 'counted' then sum(p.numerator) else 0 end::bigint, case p.class when 'counted' then sum(p.denominator) else 0 end::bigint,
    case p.class when 'counted' then sum(p.later) else 0 end::bigint, case p.class when 'counted' then sum(p.lost_clean) else 0 end::bigint,
    case p.class when 'counted' then sum(p.open_units) else 0 end::bigint, case p.class when 'counted' then sum(p.open_unit_days) else 0 end::bigint,
    count(distinct p.cluster) filter (where not p.apart)::int, count(*) filter (where p.run_missing)::int,
    count(*) filter (where p.any_trimmed)::int, count(*) filter (where p.any_as_picked)::int,
    count(*) filter (where p.dry_assumed)::int, count(*) filter (where p.any_shared)::int
  from unnest(sites, quarters) q (site_id, starts_on)
  join app.outcome_part p on p.network_id = of_network and p.site_id = q.site_id
    and p.inoculated_on >= q.starts_on and p.inoculated_on < q.starts_on + interval '3 months'
  group by p.network_id, p.site_id, q.starts_on, p.container, p.species_id, p.material_key, p.method_key, p.measure, p.class
$$;

-- The sums of whole years, from those of their quarters: a cluster counted in a quarter lies within it.
create function app.years_of(of_network uuid, sites uuid[], years date[]) returns setof public.outcome_summary
  language sql stable set search_path = public, pg_temp as $$
  select s.network_id, s.site_id, 'year', y.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class,
    sum(s.batches)::int, sum(s.units)::bigint, sum(s.numerator)::bigint, sum(s.denominator)::bigint, sum(s.later)::bigint,
    sum(s.lost_clean)::bigint, sum(s.open_units)::bigint, sum(s.open_unit_days)::bigint, sum(s.runs)::int, sum(s.run_missing)::int,
    sum(s.trimmed)::int, sum(s.as_picked)::int, sum(s.dry_assumed)::int, sum(s.shared)::int
  from unnest(sites, years) y (site_id, starts_on)
  join outcome_summary s on s.network_id = of_network and s.site_id = y.site_id and s.span = 'quarter'
    and s.starts_on >= y.starts_on and s.starts_on < y.starts_on + interval '1 year'
  group by s.network_id, s.site_id, y.starts_on, s.container, s.species_id, s.material_key, s.method_key, s.measure, s.class
$$;

-- Which of the batches given, or joined with them by one of the runs given, are apart: a run with all its batches in one
-- sum and entering on the same days is whole; one that reaches further, or meets another run in a batch, is not.
create function app.apart_of(of_network uuid, batches uuid[], runs uuid[]) returns table (batch_id uuid, apart boolean)
  language sql stable set search_path = public, pg_temp as $$
  with mates as (
    select o.* from batch_outcome o where o.network_id = of_network and o.batch_id in (
      select unnest(batches) union
      select c.batch_id from batch_component c where c.network_id = of_network and c.treatment_run_id = any (runs) and c.voided_at is null)
  ), broken as (
    select r.run from mates m cross join lateral unnest(m.run_ids) r (run) where r.run = any (runs) group by r.run
    having max(cardinality(m.run_ids)) > 1
      or count(distinct (m.site_id, m.container, m.species_id, m.material_key, m.method_key, date_trunc('quarter', m.inoculated_on),
        m.contamination_enters_on, m.yield_enters_on)) > 1
  )
  select m.batch_id, cardinality(m.run_ids) > 1
    or (cardinality(m.run_ids) = 1 and exists (select from broken where broken.run = m.run_ids[1]))
  from mates m where cardinality(m.run_ids) <> 1 or m.run_ids[1] = any (runs)
$$;

-- Brings the rows of batches, and every sum they were or are part of, up to the records. One writer of a network at a
-- time: each sum is worked out anew from rows that nobody else is changing, whoever wrote first.
create function app.keep_outcomes(of_network uuid, batches uuid[]) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  runs uuid[];
  regrouped boolean;
  sites uuid[];
  quarters date[];
  more_sites uuid[];
  more_quarters date[];
begin
  perform pg_advisory_xact_lock(hashtextextended('outcomes of ' || of_network, 0));
  with kept as (
    insert into batch_outcome as o select * from app.outcomes_of(of_network, batches)
    on conflict (network_id, batch_id) do update set
      (site_id, species_id, container, method_id, mixed_method, second_life, method_key, material_id, mixed_material,
       material_key, unit_count, inoculated_on, closed_on, closed_as_lost, no_harvest, voided, contamination_assessed_on, yield_assessed_on,
       dry_grams, dry_assumed, bed_area_cm2, contaminated_by_window_end, contaminated_at_any_time, lost_clean, last_inspected_on,
       fresh_grams_by_yield_day, fresh_grams, weighings, any_trimmed, any_as_picked, any_shared, run_ids, run_missing,
       contamination_class, contamination_enters_on, yield_class, yield_enters_on, life_class)
      = (excluded.site_id, excluded.species_id, excluded.container, excluded.method_id, excluded.mixed_method,
       excluded.second_life, excluded.method_key, excluded.material_id, excluded.mixed_material, excluded.material_key, excluded.unit_count,
       excluded.inoculated_on, excluded.closed_on, excluded.closed_as_lost, excluded.no_harvest, excluded.voided,
       excluded.contamination_assessed_on, excluded.yield_assessed_on, excluded.dry_grams, excluded.dry_assumed, excluded.bed_area_cm2,
       excluded.contaminated_by_window_end, excluded.contaminated_at_any_time, excluded.lost_clean, excluded.last_inspected_on,
       excluded.fresh_grams_by_yield_day, excluded.fresh_grams, excluded.weighings, excluded.any_trimmed, excluded.any_as_picked,
       excluded.any_shared, excluded.run_ids, excluded.run_missing, excluded.contamination_class, excluded.contamination_enters_on,
       excluded.yield_class, excluded.yield_enters_on, excluded.life_class)
      where to_jsonb(o) - 'apart' is distinct from to_jsonb(excluded) - 'apart'
    returning old.site_id as old_site, old.inoculated_on as old_day, old.run_ids as old_runs,
      new.site_id as new_site, new.inoculated_on as new_day, new.run_ids as new_runs,
      (old.run_ids, old.site_id, old.container, old.species_id, old.material_key, old.method_key, old.inoculated_on, old.contamination_enters_on, old.yield_enters_on)
      is distinct from
      (new.run_ids, new.site_id, new.container, new.species_id, new.material_key, new.method_key, new.inoculated_on, new.contamination_enters_on, new.yield_enters_on) as regrouped
  ), blocks as (
    select old_site as site, date_trunc('quarter', old_day)::date as quarter from kept where old_site is not null
    union select new_site, date_trunc('quarter', new_day)::date from kept
  )
  select (select array_agg(site order by site, quarter) from blocks), (select array_agg(quarter order by site, quarter) from blocks),
    (select coalesce(array_agg(distinct r), '{}') from kept, unnest(old_runs || new_runs) r where kept.regrouped),
    (select coalesce(bool_or(kept.regrouped), false) from kept)
  into sites, quarters, runs, regrouped;
  if sites is null then
    return;
  end if;
  if regrouped then
    with flagged as (
      update batch_outcome o set apart = a.apart from app.apart_of(of_network, batches, runs) a
      where o.network_id = of_network and o.batch_id = a.batch_id and o.apart <> a.apart
      returning o.site_id as site, date_trunc('quarter', o.inoculated_on)::date as quarter
    ), blocks as (
      select * from flagged union select * from unnest(sites, quarters)
    )
    select array_agg(site order by site, quarter), array_agg(quarter order by site, quarter) into more_sites, more_quarters from blocks;
    sites := more_sites;
    quarters := more_quarters;
  end if;
  perform app.keep_sums(of_network, 'quarter', sites, quarters);
  select array_agg(site), array_agg(year) into sites, quarters
    from (select distinct site, date_trunc('year', quarter)::date as year from unnest(sites, quarters) b (site, quarter)) y;
  perform app.keep_sums(of_network, 'year', sites, quarters);
end $$;

-- Writes the sums of blocks that differ from what they should be, and takes out those of nothing.
create function app.keep_sums(of_network uuid, of_span text, sites uuid[], starts date[]) returns void
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
  )
  insert into outcome_summary as s select * from fresh
  on conflict (network_id, site_id, span, starts_on, container, species_id, material_key, method_key, measure, class) do update set
    (batches, units, numerator, denominator, later, lost_clean, open_units, open_unit_days, runs, run_missing, trimmed, as_picked, dry_assumed, shared)
    = (excluded.batches, excluded.units, excluded.numerator, excluded.denominator, excluded.later, excluded.lost_clean, excluded.open_units,
      excluded.open_unit_days, excluded.runs, excluded.run_missing, excluded.trimmed, excluded.as_picked, excluded.dry_assumed, excluded.shared)
    where s.* is distinct from excluded.*
$$;

-- Notes which batches a statement touched; the first row a transaction notes leads to the work at its end.
create function app.note_due(of_network uuid, batches uuid[]) returns void
  language sql volatile set search_path = public, pg_temp as $$
  insert into outcome_due (network_id, batch_id, transaction, leads)
  select of_network, b, pg_current_xact_id()::text::bigint,
    row_number() over () = 1 and not exists (select from outcome_due d
      where d.network_id = of_network and d.transaction = pg_current_xact_id()::text::bigint)
  from (select distinct unnest(batches) as b) touched where b is not null
  on conflict do nothing
$$;

create function app.outcome_due() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  of_network uuid;
  touched uuid[];
begin
  for of_network in select distinct network_id from new_rows loop
    if tg_table_name = 'batch' then
      select array_agg(id) into touched from new_rows where network_id = of_network;
    elsif tg_table_name = 'weighing' then
      select array_agg(l.batch_id) into touched from new_rows n
        join weighing_line l on l.network_id = n.network_id and l.weighing_id = n.id where n.network_id = of_network;
    elsif tg_table_name = 'method' then
      select array_agg(c.batch_id) into touched from new_rows n join old_rows o on o.network_id = n.network_id and o.id = n.id and o.kind <> n.kind
        join batch_component c on c.network_id = n.network_id and c.method_id = n.id where n.network_id = of_network;
    else
      select array_agg(batch_id) into touched from new_rows where network_id = of_network;
      if tg_op = 'UPDATE' then
        select touched || array_agg(batch_id) into touched from old_rows where network_id = of_network;
      end if;
    end if;
    perform app.note_due(of_network, touched);
  end loop;
  return null;
end $$;

create function app.keep_due_outcomes() returns trigger
  language plpgsql security definer set search_path = public, pg_temp as $$
declare due uuid[];
begin
  with gone as (
    delete from outcome_due where network_id = new.network_id and transaction = pg_current_xact_id()::text::bigint returning batch_id
  )
  select array_agg(batch_id order by batch_id) into due from gone;
  if due is not null then
    perform app.keep_outcomes(new.network_id, due);
  end if;
  return null;
end $$;

create constraint trigger keep_outcomes after insert on public.outcome_due deferrable initially deferred
  for each row when (new.leads) execute function app.keep_due_outcomes();
do $$
declare t text;
begin
  foreach t in array array['batch', 'batch_component', 'look', 'finding', 'loss', 'weighing_line'] loop
    execute format('create trigger outcome_due_insert after insert on public.%I referencing new table as new_rows for each statement execute function app.outcome_due()', t);
  end loop;
  foreach t in array array['batch', 'batch_component', 'look', 'finding', 'loss', 'weighing', 'weighing_line', 'method'] loop
    execute format('create trigger outcome_due_update after update on public.%I referencing new table as new_rows old table as old_rows for each statement execute function app.outcome_due()', t);
  end loop;
end $$;

-- For the operator: everything anew, and what differs from what the records give.
create function app.rebuild_outcomes(of_network uuid) returns void
  language plpgsql security definer set search_path = public, pg_temp as $$
declare own uuid[];
begin
  perform pg_advisory_xact_lock(hashtextextended('outcomes of ' || of_network, 0));
  delete from outcome_summary where network_id = of_network;
  delete from batch_outcome where network_id = of_network;
  for own in select array_agg(id) from batch where network_id = of_network group by site_id loop
    perform app.keep_outcomes(of_network, own);
  end loop;
end $$;

create function app.wrong_outcomes(of_network uuid) returns table (what text, place text, kept jsonb, records jsonb)
  language plpgsql security definer set search_path = public, pg_temp as $$
declare
  site uuid;
  own uuid[];
  runs uuid[];
  sites uuid[];
  starts date[];
begin
  perform pg_advisory_xact_lock(hashtextextended('outcomes of ' || of_network, 0));
  for site, own in select b.site_id, array_agg(b.id) from batch b where b.network_id = of_network group by b.site_id loop
    return query select 'batch', coalesce(o.batch_id, f.batch_id)::text, to_jsonb(o), to_jsonb(f)
      from (select * from batch_outcome x where x.network_id = of_network and x.batch_id = any (own)) o
      full join app.outcomes_of(of_network, own) f on f.batch_id = o.batch_id
      where to_jsonb(o) - 'apart' is distinct from to_jsonb(f) - 'apart';
    select coalesce(array_agg(distinct r), '{}') into runs
      from batch_outcome x, unnest(x.run_ids) r where x.network_id = of_network and x.batch_id = any (own);
    return query select 'cluster', o.batch_id::text, to_jsonb(o.apart), to_jsonb(a.apart)
      from app.apart_of(of_network, own, runs) a join batch_outcome o on o.network_id = of_network and o.batch_id = a.batch_id
      where o.apart <> a.apart;
    select array_agg(site), array_agg(quarter) into sites, starts from (
      select date_trunc('quarter', x.inoculated_on)::date as quarter from batch_outcome x where x.network_id = of_network and x.site_id = site
      union select s.starts_on from outcome_summary s where s.network_id = of_network and s.site_id = site and s.span = 'quarter') q;
    return query select 'quarter', site::text, to_jsonb(s), to_jsonb(f)
      from (select * from outcome_summary x where x.network_id = of_network and x.site_id = site and x.span = 'quarter') s
      full join app.quarters_of(of_network, sites, starts) f
        using (site_id, starts_on, container, species_id, material_key, method_key, measure, class)
      where s is distinct from f;
    select array_agg(site), array_agg(year) into sites, starts from (
      select distinct date_trunc('year', x.starts_on)::date as year from outcome_summary x where x.network_id = of_network and x.site_id = site) y;
    return query select 'year', site::text, to_jsonb(s), to_jsonb(f)
      from (select * from outcome_summary x where x.network_id = of_network and x.site_id = site and x.span = 'year') s
      full join app.years_of(of_network, sites, starts) f
        using (site_id, starts_on, container, species_id, material_key, method_key, measure, class)
      where s is distinct from f;
  end loop;
  return query select 'left behind', o.site_id::text, to_jsonb(o), null::jsonb from outcome_summary o
    where o.network_id = of_network and not exists (select from batch b where b.network_id = of_network and b.site_id = o.site_id);
end $$;
create function app.network_ids() returns setof uuid
  language sql stable security definer set search_path = public, pg_temp as $$ select id from public.network order by id $$;

do $$
declare f regprocedure;
begin
  for f in select p.oid::regprocedure from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'app' and p.proname in ('outcomes_of', 'quarters_of', 'years_of', 'apart_of', 'keep_outcomes', 'keep_sums', 'note_due',
      'outcome_due', 'keep_due_outcomes', 'rebuild_outcomes', 'wrong_outcomes', 'network_ids')
  loop
    execute format('alter function %s owner to pinset_definer', f);
    execute format('revoke execute on function %s from public', f);
  end loop;
  execute format('grant execute on function app.rebuild_outcomes(uuid), app.wrong_outcomes(uuid), app.network_ids() to %I', current_user);
end $$;

-- What is already recorded.
select app.rebuild_outcomes(id) from app.network_ids() id;
