-- What one batch adds to its sums, in one row: fresh mass, what it is divided by, and the log-days of open logs. The rule
-- stands here once, for the four measures one by one and for those who add up whole batches.
create view app.outcome_row with (security_invoker = true) as
  select o.network_id, o.batch_id, o.site_id, o.container, o.species_id, o.material_key, o.method_key, o.inoculated_on,
    o.unit_count as units, o.contaminated_by_window_end as contaminated,
    o.contaminated_at_any_time - o.contaminated_by_window_end as contaminated_later, o.lost_clean,
    o.contamination_class, o.contamination_enters_on, o.yield_class, o.yield_enters_on, o.life_class,
    o.yield_class = 'counted' and case when o.container = 'log' then o.fresh_grams else o.fresh_grams_by_yield_day end > 0 as cropped,
    case when o.container = 'log' then o.fresh_grams else o.fresh_grams_by_yield_day end as fresh,
    case when o.container = 'log' then 0 else o.fresh_grams - o.fresh_grams_by_yield_day end as fresh_later,
    case when o.container = 'bed' then o.bed_area_cm2::bigint when o.container <> 'log' then o.dry_grams::bigint
      when o.closed_on is null then 0
      else o.unit_count::bigint * greatest(365, o.closed_on - o.inoculated_on) end as yield_over,
    case when o.container = 'log' and o.closed_on is null then o.unit_count else 0 end as open_units,
    case when o.container = 'log' and o.closed_on is null
      then o.unit_count::bigint * (o.inoculated_on - date '1970-01-01') else 0 end as open_unit_days,
    o.fresh_grams as life_fresh, o.dry_grams::bigint as life_dry,
    o.run_missing, o.any_trimmed, o.any_as_picked, o.dry_assumed, o.any_shared, o.apart, coalesce(o.run_ids[1], o.batch_id) as cluster
  from public.batch_outcome o;
grant select on app.outcome_row to pinset_app, pinset_definer;

-- As before, out of that row. Open log-days of a measure that has none are 0; only those of yields are ever read.
create or replace view app.outcome_part with (security_invoker = true) as
  select o.network_id, o.batch_id, o.site_id, o.container, o.species_id, o.material_key, o.method_key, o.inoculated_on,
    p.measure, p.class, p.enters_on, o.units, p.numerator, p.denominator, p.later, p.lost_clean,
    case when p.of_yield then o.open_units else 0 end as open_units,
    case when p.of_yield then o.open_unit_days else 0 end as open_unit_days,
    o.run_missing, o.any_trimmed, o.any_as_picked, o.dry_assumed, o.any_shared, o.apart,
    o.cluster, o.contamination_enters_on, o.yield_enters_on
  from app.outcome_row o
  cross join lateral (values
    ('contamination', o.contamination_class, o.contamination_enters_on, o.contaminated::bigint, o.units::bigint,
      o.contaminated_later::bigint, o.lost_clean::bigint, false),
    ('yield', o.yield_class, o.yield_enters_on, o.fresh, o.yield_over, o.fresh_later, 0::bigint, true),
    ('cropped', case when o.cropped then 'counted' end, o.yield_enters_on, o.fresh, o.yield_over, o.fresh_later, 0::bigint, true),
    ('life', o.life_class, null::date, o.life_fresh, o.life_dry, 0::bigint, 0::bigint, false)
  ) p (measure, class, enters_on, numerator, denominator, later, lost_clean, of_yield)
  where p.class is not null;
