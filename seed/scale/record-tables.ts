import type { ScalePlan } from './plan-tables';

/** Sites, lots, runs with a reading each, batches with what they are made of. Logs and beds are untreated. */
export function stockStatements({ networkId, today, days }: ScalePlan): readonly string[] {
  const network = `'${networkId}'::uuid`;
  return [
    `insert into public.site (network_id, id, code, name, kind, time_zone, origin)
     select ${network}, id, 'S' || lpad(s::text, 5, '0'), 'Garden ' || s, 'community_garden', 'America/Chicago', 'seed' from planned_site`,
    `insert into public.substrate_lot (network_id, id, code, material_id, received_on, moisture_percent, moisture_source, origin)
     select ${network}, pg_temp.scale_id(4, 2 * m + n), 'ML-' || 2 * m + n, (select id from public.material where network_id = ${network}
       and code = (array['wheat_straw', 'hardwood_sawdust'])[1 + n]), date '${today}' - ${days} + m * 14, 12, 'measured', 'seed'
     from generate_series(0, ${Math.ceil(days / 14)}) m, generate_series(0, 1) n`,
    `insert into public.spawn_lot (network_id, id, code, species_id, form, made_on, origin)
     select distinct on (spawn_number, species_id) ${network}, pg_temp.scale_id(5, spawn_number * 8 + kind), 'SL-' || spawn_number || '-' || kind,
       species_id, 'grain'::public.spawn_form, on_day - 30, 'seed'::public.record_origin
     from (select *, dense_rank() over (order by species_id) as kind from planned_batch) b order by spawn_number, species_id, on_day`,
    `insert into public.treatment_run (network_id, id, code, site_id, method_id, started_at, ended_at, origin)
     select distinct on (b.run_id) ${network}, b.run_id, 'R-' || b.r, b.site_id, b.method_id, b.on_day + time '15:00', b.on_day + time '18:00', 'seed'::public.record_origin
     from planned_batch b where b.treated order by b.run_id`,
    `insert into public.treatment_reading (network_id, id, treatment_run_id, site_id, read_at, place, celsius, ph, origin)
     select ${network}, pg_temp.scale_id(6, r), id, site_id, on_day + time '16:00', 'load_middle', case way when 1 then null else 68 + 4 * pg_temp.z(r, 50) end,
       case way when 1 then 11.5 + 0.4 * pg_temp.z(r, 54) end, 'seed' from planned_run where container not in ('log', 'bed')`,
    `insert into public.batch (network_id, id, code, site_id, species_id, container_kind, unit_count, inoculated_on, method_id, material_id,
       moisture_source, dry_mass_from, dry_grams, dry_assumed, bed_area_cm2, contamination_assessed_on, yield_assessed_on, closed_on, close_reason, no_harvest, origin)
     select ${network}, b.id, 'B-' || b.i, b.site_id, b.species_id, b.container::public.container_kind, b.units, b.on_day, b.method_id, b.material_id,
       'none', 'none', case when pg_temp.u(b.i, 60) < 0.97 then (b.units * (800 + 400 * pg_temp.u(b.i, 61)))::int end, pg_temp.u(b.i, 62) < 0.1,
       case when b.container = 'bed' then 20000 end, b.on_day + w.contamination_days, b.on_day + w.yield_days,
       c.closed_on, case when c.closed_on is not null then 'finished'::public.close_reason end,
       case when c.closed_on is not null and pg_temp.u(b.i, 63) < 0.5 then 'none_picked'::public.no_harvest end, 'seed'
     from planned_batch b
     left join public.assessment_window w on w.network_id = ${network} and w.species_id = b.species_id and w.container_kind::text = b.container
     cross join lateral (select case when b.on_day + 150 < date '${today}' and b.container <> 'log' and pg_temp.u(b.i, 64) < 0.95
       then b.on_day + 120 + (pg_temp.u(b.i, 65) * 30)::int end as closed_on) c`,
    `insert into public.batch_component (network_id, id, batch_id, site_id, substrate_lot_id, method_id, treatment_run_id, role, mass_stage, origin)
     select ${network}, pg_temp.scale_id(7, b.i), b.id, b.site_id, pg_temp.scale_id(4, 2 * ((b.on_day - (date '${today}' - ${days})) / 14)
       + (b.material_id <> (select id from public.material where network_id = ${network} and code = 'wheat_straw'))::int),
       b.method_id, case when b.treated then b.run_id end, 'substrate', 'filled', 'seed' from planned_batch b`,
    `insert into public.batch_component (network_id, id, batch_id, site_id, substrate_lot_id, method_id, treatment_run_id, role, mass_stage, origin)
     select ${network}, pg_temp.scale_id(8, b.i), b.id, b.site_id, pg_temp.scale_id(4, 2 * ((b.on_day - (date '${today}' - ${days})) / 14)),
       b.method_id, o.id, 'supplement', 'filled', 'seed'
     from planned_batch b join planned_run x on x.r = b.r join planned_run o on o.r = b.r + 1 and o.container not in ('log', 'bed') and o.way = x.way
     where b.treated and b.i % 20 = 0`,
    `insert into public.spawn_share (network_id, id, batch_id, site_id, spawn_lot_id, grams, origin)
     select ${network}, pg_temp.scale_id(9, b.i), b.id, b.site_id, pg_temp.scale_id(5, b.spawn_number * 8 + b.kind), b.units * 60, 'seed'
     from (select *, dense_rank() over (order by species_id) as kind from planned_batch) b`,
  ];
}
