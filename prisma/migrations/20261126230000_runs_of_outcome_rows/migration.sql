-- As before, with all runs of a batch: rows of sites cluster by treatment run, and a batch of several joins them.
create or replace view app.outcome_row with (security_invoker = true) as
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
    o.run_missing, o.any_trimmed, o.any_as_picked, o.dry_assumed, o.any_shared, o.apart, coalesce(o.run_ids[1], o.batch_id) as cluster,
    o.run_ids
  from public.batch_outcome o;
