import { randomUUID } from 'node:crypto';
import type { Client } from 'pg';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import type { Growers } from '../../support/growers';
import type { Shed } from '../../support/shed';

/** What the database refuses: a broken rule, or one of two writers who wait for each other. Nothing is left behind. */
const refusals = /^(PB|23|40P01)/;

/** Lives of batches at random, by SQL, as corrections, voids and moves would change them; the same for a seed. */
export function randomWrites(
  db: Client,
  people: Growers,
  stock: Shed,
  seed: number,
  sites: readonly string[] = [people.millLane, people.quarry],
) {
  const random: SeededRandom = seededRandom(seed);
  const network = people.coordinator.networkId;
  const below = (count: number) => random.integer(count);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  const day = (from: string, days: number) =>
    new Date(Date.parse(`${from}T00:00:00Z`) + 864e5 * below(days)).toISOString().slice(0, 10);
  const run = (sql: string, values: readonly unknown[] = []) => db.query(sql, [network, ...values]);

  async function anyOf(table: string, where = 'true') {
    const { rows } = await run(
      `select * from "${table}" where network_id = $1 and ${where} order by created_at, id`,
    );
    return rows.length === 0 ? undefined : (pick(rows) as Record<string, string>);
  }

  async function addComponents(batch: string, site: string) {
    for (let count = pick([0, 1, 1, 1, 2]); count > 0; count -= 1) {
      const treated = random.next() < 0.8;
      const one = treated ? await anyOf('treatment_run') : undefined;
      await run(
        `insert into batch_component (network_id, batch_id, site_id, substrate_lot_id, method_id, treatment_run_id, role, mass_stage)
         values ($1, $2, $3, $4, $5, $6, $7, 'filled')`,
        [
          ...[
            batch,
            site,
            stock.straw,
            one?.method_id ?? pick([stock.untreated, stock.lime]),
            one?.id ?? null,
          ],
          pick(['substrate', 'substrate', 'substrate', 'additive']),
        ],
      );
    }
  }

  async function start() {
    const [id, site] = [randomUUID(), pick(sites)];
    const container = pick(['bag', 'bag', 'bag', 'bed', 'log']);
    const on = day('2025-11-15', 120);
    const windowless = random.next() < 0.1;
    const mixed = random.next() < 0.1;
    await run(
      `insert into batch (network_id, id, code, site_id, species_id, container_kind, unit_count, inoculated_on, method_id, mixed_method,
         second_life, moisture_source, dry_mass_from, dry_grams, dry_assumed, bed_area_cm2, contamination_assessed_on, yield_assessed_on)
       values ($1, $2::uuid, $2::text, $3, $4, $5::container_kind, $6, $7, $8, $9, $10, 'none', 'none', $11, $12, $13, $14::date, $14::date + 60)`,
      [
        ...[id, site, pick([stock.oyster, stock.oyster, stock.shiitake]), container],
        ...[container === 'bed' ? 1 : 1 + below(8), on],
        ...[mixed ? null : pick([stock.hotWater, stock.lime]), mixed, random.next() < 0.1],
        ...[pick([null, 900, 4000]), random.next() < 0.3, container === 'bed' ? pick([null, 9000]) : null],
        windowless ? null : day(on, 40),
      ],
    );
    await addComponents(id, site);
  }

  async function happen() {
    const batch = await anyOf('batch');
    if (!batch) return;
    const own = [batch.id, batch.site_id];
    const on = day('2025-11-15', 260);
    const kind = pick(['look', 'finding', 'loss', 'weighing', 'weighing']);
    if (kind === 'look')
      await run('insert into look (network_id, batch_id, site_id, looked_on) values ($1, $2, $3, $4)', [
        ...own,
        on,
      ]);
    if (kind === 'finding')
      await run(
        `insert into finding (network_id, batch_id, site_id, found_on, units, sign, stage, action)
         values ($1, $2, $3, $4, $5, 'green', 'colonising', 'discarded')`,
        [...own, on, 1 + below(3)],
      );
    if (kind === 'loss')
      await run(
        `insert into loss (network_id, batch_id, site_id, lost_on, units, contaminated_units, cause)
         values ($1, $2, $3, $4, 2, $5, 'eaten')`,
        [...own, on, below(2)],
      );
    if (kind !== 'weighing') return;
    const weighing = randomUUID();
    const other = await anyOf('batch', `site_id = '${batch.site_id}'`);
    await run(
      `insert into weighing (network_id, id, site_id, weighed_on, fresh_grams, trim_state) values ($1, $2, $3, $4, 500, $5)`,
      [weighing, batch.site_id, on, pick(['trimmed', 'as_picked'])],
    );
    await run(
      `insert into weighing_line (network_id, weighing_id, site_id, batch_id, flush, fresh_grams, shared_weighing)
       values ($1, $2, $3, $4, 1, 300, true), ($1, $2, $3, $5, 1, 200, true)`,
      [weighing, batch.site_id, batch.id, other?.id],
    );
  }

  async function change() {
    const table = pick(['batch', 'batch_component', 'look', 'finding', 'loss', 'weighing']);
    const row = await anyOf(table);
    if (row && random.next() < 0.5)
      await run(
        `update "${table}" set voided_at = case when voided_at is null then now() end, void_reason = 'tried' where network_id = $1 and id = $2`,
        [row.id],
      );
    const batch = await anyOf('batch');
    if (!batch) return;
    const set = pick([
      `unit_count = unit_count + 1`,
      `inoculated_on = inoculated_on + 20`,
      `closed_on = inoculated_on + 90, close_reason = 'finished', no_harvest = 'none_picked'`,
      `closed_on = inoculated_on + 400, close_reason = 'contaminated', no_harvest = 'not_weighed'`,
      `closed_on = null, close_reason = null, no_harvest = null`,
      `dry_grams = 2500`,
      `site_id = '${pick(sites)}'`,
      `method_id = '${stock.lime}', mixed_method = false`,
      `second_life = not second_life`,
      `contamination_assessed_on = inoculated_on + 30, yield_assessed_on = inoculated_on + 70`,
    ]);
    await run(`update batch set ${set} where network_id = $1 and id = $2`, [batch.id]);
    if (random.next() < 0.3) {
      await run(
        `update batch_component set voided_at = now(), void_reason = 'tried' where network_id = $1 and batch_id = $2`,
        [batch.id],
      );
      await addComponents(batch.id as string, batch.site_id as string);
    }
    if (random.next() < 0.05)
      await run(`update batch set contamination_assessed_on = inoculated_on + 25 where network_id = $1`);
    if (random.next() < 0.1)
      await run(
        `update weighing set weighed_on = weighed_on + 9, trim_state = 'trimmed' where network_id = $1 and id = $2`,
        [(await anyOf('weighing'))?.id],
      );
  }

  /** One transaction of a few writes; some are taken back, by a rule or on purpose. */
  return async function write(): Promise<void> {
    await db.query('begin');
    try {
      for (let count = 1 + below(3); count > 0; count -= 1)
        await pick([start, happen, happen, happen, change, change])();
      await db.query(random.next() < 0.1 ? 'rollback' : 'commit');
    } catch (problem) {
      await db.query('rollback');
      if (!refusals.test(String((problem as { code?: string }).code))) throw problem;
    }
  };
}

/** Three more treatment runs at both sites, besides the one of the shed. */
export async function moreRuns(db: Client, people: Growers, stock: Shed): Promise<void> {
  for (const [code, site] of [
    ['RUN-2', people.millLane],
    ['RUN-3', people.quarry],
    ['RUN-4', people.quarry],
  ])
    await db.query(
      `insert into treatment_run (network_id, code, site_id, method_id, started_at) values ($1, $2, $3, $4, '2026-01-01')`,
      [people.coordinator.networkId, code, site, stock.hotWater],
    );
}

/** Both sites and three more. */
export async function moreSites(db: Client, people: Growers): Promise<string[]> {
  const { rows } = await db.query<{ id: string }>(
    `insert into site (network_id, code, name, kind, time_zone)
     select $1, 'MORE-' || n, 'Plot ' || n, 'allotment', 'America/New_York' from generate_series(1, 3) n returning id`,
    [people.coordinator.networkId],
  );
  return [people.millLane, people.quarry, ...rows.map(({ id }) => id)];
}
