-- The days on which a batch enters, beside its parts, so that those whose day lies ahead are found by index.
create or replace view app.outcome_part with (security_invoker = true) as
  select o.network_id, o.batch_id, o.site_id, o.container, o.species_id, o.material_key, o.method_key, o.inoculated_on,
    p.measure, p.class, p.enters_on, o.unit_count as units, p.numerator, p.denominator, p.later, p.lost_clean,
    case when p.open_log then o.unit_count else 0 end as open_units,
    case when p.open_log then o.unit_count::bigint * (o.inoculated_on - date '1970-01-01') else 0 end as open_unit_days,
    o.run_missing, o.any_trimmed, o.any_as_picked, o.dry_assumed, o.any_shared, o.apart,
    coalesce(o.run_ids[1], o.batch_id) as cluster, o.contamination_enters_on, o.yield_enters_on
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
