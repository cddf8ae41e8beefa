/** How large, over how many days up to which one, for which network. */
export type ScalePlan = {
  readonly networkId: string;
  readonly batches: number;
  readonly sites: number;
  readonly days: number;
  readonly today: string;
};

/**
 * Everything decided in three temporary tables, before anything is written: sites with a method they favour and a
 * luck of their own; runs, each a load of one method on one day at one site; batches, two of a run, of which most
 * share species and material, and every twentieth was filled from a second run, too.
 */
export function planTables({ networkId, batches, sites, days, today }: ScalePlan): string {
  const network = `'${networkId}'::uuid`;
  const code = (table: string, name: string) =>
    `(select id from public.${table} where network_id = ${network} and code = '${name}')`;
  return `
create temp table planned_site as select s, pg_temp.scale_id(1, s) as id, pg_temp.z(s, 10) as luck,
  case when pg_temp.u(s, 14) < 0.45 then 0 when pg_temp.u(s, 14) < 0.8 then 1 else 2 end as favours
  from generate_series(1, ${sites}) s;
create temp table planned_run as select r, pg_temp.scale_id(2, r) as id, p.s, p.id as site_id, pg_temp.z(r, 20) as luck,
  date '${today}' - (${days} * power(pg_temp.u(r, 24), 0.9))::int as on_day,
  case when pg_temp.u(r, 25) < 0.8 then p.favours else (pg_temp.u(r, 26) * 3)::int % 3 end as way,
  case when pg_temp.u(r, 27) < 0.82 then 'bag' when pg_temp.u(r, 27) < 0.92 then 'bucket'
    when pg_temp.u(r, 27) < 0.96 then 'bed' else 'log' end as container
  from generate_series(1, ${Math.ceil(batches / 2)}) r join planned_site p on p.s = 1 + (pg_temp.u(r, 28) * ${sites})::int % ${sites};
create temp table planned_batch as
  select b as i, pg_temp.scale_id(3, b) as id, r.r, r.id as run_id, r.site_id, r.on_day, r.container,
    case when r.container = 'log' then ${code('species', 'lentinula_edodes')}
      when r.container = 'bed' then ${code('species', 'stropharia_rugosoannulata')}
      when pg_temp.u(case when pg_temp.u(b, 30) < 0.9 then r.r else -b end, 31) < 0.7 then ${code('species', 'pleurotus_ostreatus')}
      else ${code('species', 'lentinula_edodes')} end as species_id,
    case when r.container in ('log', 'bed') then ${code('method', 'untreated')}
      else (array[${code('method', 'hot_water_bath')}, ${code('method', 'cold_lime_soak')}, ${code('method', 'steam')}])[1 + r.way] end as method_id,
    r.container not in ('log', 'bed') as treated,
    case when pg_temp.u(case when pg_temp.u(b, 32) < 0.95 then r.r else -b end, 33) < 0.85 then ${code('material', 'wheat_straw')}
      else ${code('material', 'hardwood_sawdust')} end as material_id,
    case when r.container = 'bed' then 1 else 4 + (pg_temp.u(b, 34) * 26)::int end as units,
    1 + ((${days} - (date '${today}' - r.on_day)) / 14 * 10 + (pg_temp.u(b, 35) * 10)::int)::bigint as spawn_number,
    1 / (1 + exp(2.9 - 0.5 * s.luck - 0.7 * r.luck - 0.4 * (r.way = 1)::int
      - 0.5 * pg_temp.z(1 + ((${days} - (date '${today}' - r.on_day)) / 14 * 10 + (pg_temp.u(b, 35) * 10)::int)::bigint, 40))) as risk
  from generate_series(1, ${batches}) b join planned_run r on r.r = (b + 1) / 2 join planned_site s on s.s = r.s;
create index on planned_run (r);
analyze planned_site, planned_run, planned_batch;
grant select on planned_site, planned_run, planned_batch to public;
`;
}
