import type { ScalePlan } from './plan-tables';

/** What came of the batches up to today: findings, looks, losses and one or two flushes on the scale. */
export function eventStatements({ networkId, today }: ScalePlan): readonly string[] {
  const network = `'${networkId}'::uuid`;
  const found =
    'least(b.units, floor(b.units * b.risk * 1.3 * pg_temp.u(b.i, 70) * 2 + pg_temp.u(b.i, 71))::int)';
  const flush = (number: number, share: string, after: string, kind: number) => {
    const grams = `(b.units * 950 * ${share} * exp(0.25 * pg_temp.z(b.i, ${80 + 4 * number})) * (1 - 0.8 * b.risk))::int`;
    const from = `from planned_batch b cross join lateral (select b.on_day + ${after} as on_day, ${grams} as grams) f
      where f.on_day <= date '${today}' and f.grams > 0 and pg_temp.u(b.i, ${90 + number}) < 0.94 - b.risk`;
    return [
      `insert into public.weighing (network_id, id, site_id, weighed_on, fresh_grams, trim_state, origin)
       select ${network}, pg_temp.scale_id(${kind}, b.i), b.site_id, f.on_day, f.grams,
         case when pg_temp.u(b.i, 95) < 0.3 then 'trimmed' else 'as_picked' end::public.trim_state, 'seed' ${from}`,
      `insert into public.weighing_line (network_id, id, weighing_id, site_id, batch_id, flush, fresh_grams, origin)
       select ${network}, pg_temp.scale_id(${kind + 4}, b.i), pg_temp.scale_id(${kind}, b.i), b.site_id, b.id, ${number}, f.grams, 'seed' ${from}`,
    ];
  };
  const days = (from: number, over: number, k: number) => `${from} + (pg_temp.u(b.i, ${k}) * ${over})::int`;
  return [
    `insert into public.finding (network_id, id, batch_id, site_id, found_on, units, sign, stage, action, origin)
     select ${network}, pg_temp.scale_id(10, b.i), b.id, b.site_id, f.on_day, ${found}, 'green', 'colonising', 'discarded', 'seed'
     from planned_batch b cross join lateral (select b.on_day + ${days(6, 18, 72)} as on_day) f
     where f.on_day <= date '${today}' and ${found} > 0`,
    `insert into public.look (network_id, id, batch_id, site_id, looked_on, origin)
     select ${network}, pg_temp.scale_id(11, b.i), b.id, b.site_id, l.on_day, 'seed'
     from planned_batch b join public.batch k on k.network_id = ${network} and k.id = b.id
     cross join lateral (select k.contamination_assessed_on + (pg_temp.u(b.i, 73) * 6)::int as on_day) l
     where l.on_day <= date '${today}' and pg_temp.u(b.i, 74) < 0.92`,
    `insert into public.loss (network_id, id, batch_id, site_id, lost_on, units, contaminated_units, cause, origin)
     select ${network}, pg_temp.scale_id(12, b.i), b.id, b.site_id, l.on_day, 1, 0, 'dried_out', 'seed'
     from planned_batch b cross join lateral (select b.on_day + ${days(10, 40, 75)} as on_day) l
     where l.on_day <= date '${today}' and b.units > 6 and pg_temp.u(b.i, 76) < 0.04`,
    ...flush(1, '0.45', days(35, 20, 77), 20),
    ...flush(2, '0.2', days(58, 25, 78), 21),
  ];
}
