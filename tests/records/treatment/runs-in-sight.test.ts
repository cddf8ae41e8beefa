import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;

/** A run at a site, shared out to another as well where one is named. */
async function run(code: string, site: string, sharedWith?: string): Promise<void> {
  const { rows } = await admin.query<{ id: string; network_id: string }>(
    `insert into treatment_run (network_id, code, site_id, method_id, started_at)
     select network_id, $1, id, $2, '2026-05-01T08:00:00Z' from site where id = $3 returning id, network_id`,
    [code, stock.hotWater, site],
  );
  const [made] = rows;
  if (sharedWith === undefined) return;
  await admin.query(
    'insert into treatment_allocation (network_id, treatment_run_id, site_id) values ($1, $2, $3)',
    [made?.network_id, made?.id, sharedWith],
  );
}

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  await run('OWN', people.millLane);
  await run('SHARED', people.quarry, people.millLane);
  await run('OTHER', people.quarry);
}, 120_000);
afterAll(() => admin.end());

const sorted = (codes: readonly string[]) => codes.toSorted();
const listed = async (actor: Actor) => {
  const { runs } = await readAs(actor, (context) => listTreatments(context, treatmentFilterInput.parse({})));
  return sorted(runs.map(({ code }) => code));
};
const offered = async (actor: Actor) => {
  const { runs } = await readAs(actor, (context) => listStartChoices(context));
  return sorted(runs.map(({ code }) => code));
};
/** What the row policies let through by themselves. */
const allowed = async (actor: Actor) => {
  const rows = await readAs(actor, ({ db }) =>
    db.treatmentRun.findMany({ where: { voidedAt: null }, select: { code: true } }),
  );
  return sorted(rows.map(({ code }) => code));
};

describe('the runs that are listed and offered', () => {
  it('are for a member those of the own sites and those shared out to them, and no other', async () => {
    expect(await listed(people.member)).toEqual(expect.arrayContaining(['OWN', 'SHARED']));
    expect(await listed(people.member)).not.toContain('OTHER');
    expect(await listed(people.neighbour)).toEqual(expect.arrayContaining(['OTHER', 'SHARED']));
    expect(await listed(people.neighbour)).not.toContain('OWN');
  });

  it.each(['coordinator', 'member', 'neighbour', 'stranger'] as const)(
    'are for %s all that the policies let through',
    async (role) => {
      const actor = people[role];
      expect(await listed(actor)).toEqual(await allowed(actor));
      expect(await offered(actor)).toEqual(await allowed(actor));
    },
  );
});
