import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { findLastStarted } from '@/lib/records/batch/find-last-started.query';
import { listSourceBatches } from '@/lib/records/batch/list-source-batches.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listStartFacts } from '@/lib/records/batch/list-start-facts.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { manySites } from '../../support/many-sites';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
/** Of a small network, and of one that has more sites than are listed. */
let few: Growers;
let many: Growers;
const stock = new Map<Growers, Shed>();

/** Runs, lots and receipts of a network: those of Mill Lane are older than a hundred of Quarry Farm. */
async function arrange(people: Growers): Promise<void> {
  const { rows } = await admin.query<{ id: string }>('select network_id as id from site where id = $1', [
    people.millLane,
  ]);
  const network = rows[0]?.id;
  const { hotWater, oyster } = stock.get(people) ?? {};
  await admin.query(
    `insert into treatment_run (network_id, code, site_id, method_id, started_at)
     select $1, 'QUARRY-' || n, $2, $3, '2026-05-01T08:00:00Z'::timestamptz + n * interval '1 hour' from generate_series(1, 70) n`,
    [network, people.quarry, hotWater],
  );
  await admin.query(
    `insert into treatment_run (network_id, code, site_id, method_id, started_at)
     select $1, 'MILL-' || n, $2, $3, '2026-04-01T08:00:00Z'::timestamptz + n * interval '1 hour' from generate_series(1, 2) n`,
    [network, people.millLane, hotWater],
  );
  await admin.query(
    `insert into treatment_allocation (network_id, treatment_run_id, site_id, voided_at, void_reason)
     select $1, id, $2, case code when 'QUARRY-2' then now() end, case code when 'QUARRY-2' then 'mistaken' end
     from treatment_run where network_id = $1 and code in ('QUARRY-1', 'QUARRY-2')`,
    [network, people.millLane],
  );
  await admin.query(
    `insert into substrate_lot (network_id, code, material_id, received_on, moisture_source)
     select $1, 'NEW-' || n, (select id from material where network_id = $1 and code = 'wheat_straw'), '2026-05-01', 'none'
     from generate_series(1, 110) n`,
    [network],
  );
  await admin.query(
    `insert into spawn_lot (network_id, code, species_id, form)
     select $1, 'NEW-' || n, $2, 'grain' from generate_series(1, 110) n`,
    [network, oyster],
  );
  const receipt = (table: string, lot: string, code: string, site: string, voided: boolean) =>
    admin.query(
      `insert into ${table}_receipt (network_id, ${lot}, site_id, received_on, grams, voided_at, void_reason)
       select $1, id, $2, '2026-03-05', 1000, case when $4 then now() end, case when $4 then 'mistaken' end
       from ${table}_lot where network_id = $1 and code = $3`,
      [network, site, code, voided],
    );
  await receipt('substrate', 'substrate_lot_id', 'STRAW-1', people.millLane, false);
  await receipt('substrate', 'substrate_lot_id', 'STRAW-1', people.millLane, false);
  await receipt('substrate', 'substrate_lot_id', 'BRAN-1', people.quarry, false);
  await receipt('substrate', 'substrate_lot_id', 'LOGS-1', people.millLane, true);
  await receipt('spawn', 'spawn_lot_id', 'SP-1', people.millLane, false);
  for (const code of ['SP-1', 'SP-2', 'NEW-110'])
    await receipt('spawn', 'spawn_lot_id', code, people.quarry, false);
  await receipt('spawn', 'spawn_lot_id', 'SP-3', people.millLane, true);
}

beforeAll(async () => {
  await admin.connect();
  few = await growers(superuser, 'FEW');
  many = await growers(superuser, 'MANY');
  await manySites(admin, many.millLane);
  for (const people of [few, many]) {
    stock.set(people, await shed(people));
    await arrange(people);
  }
}, 120_000);
afterAll(() => admin.end());

const offered = (people: Growers, asked: string | null, actor = people.coordinator) =>
  readAs(actor, async (context) => {
    const formSites = await listFormSites(context, { asked, open: true });
    return listStartChoices(context, { formSites });
  });
const codes = (rows: readonly { readonly code: string }[]) => rows.map(({ code }) => code);
const down = (name: string, from: number, to: number) =>
  Array.from({ length: from - to + 1 }, (_, at) => `${name}-${from - at}`);

describe('what a new batch of a site can be made of, where the sites are too many to list', () => {
  it('begins with the latest runs of the site and those shared out to it; then come the others, as many as fit', async () => {
    const { runs } = await offered(many, many.millLane);
    // Shared out, later than its own; QUARRY-2 was shared out by mistake, BATH-1 is its oldest.
    const own = ['QUARRY-1', 'MILL-2', 'MILL-1', 'BATH-1'];
    expect(codes(runs)).toEqual([...own, ...down('QUARRY', 70, 15)]);
  });

  it('begins with the lots that the site received, each once, however old', async () => {
    const { substrateLots, spawnLots } = await offered(many, many.millLane);
    expect(substrateLots).toHaveLength(100);
    expect(substrateLots[0]?.code).toBe('STRAW-1');
    expect(
      codes(substrateLots)
        .slice(1)
        .every((code) => code.startsWith('NEW-')),
    ).toBe(true);
    expect(spawnLots).toHaveLength(100);
    expect(spawnLots[0]?.code).toBe('SP-1');
    expect(
      codes(spawnLots)
        .slice(1)
        .every((code) => code.startsWith('NEW-')),
    ).toBe(true);
  });

  it('says what that site has left of its lots, and of no other', async () => {
    const left = async (people: Growers) => {
      const choices = await offered(people, people.millLane);
      const facts = await readAs(people.coordinator, (context) => listStartFacts(context, choices));
      const code = (lotId: string) => choices.spawnLots.find(({ id }) => id === lotId)?.code;
      return facts.spawnLeft.map(({ lotId, siteId, grams }) => [code(lotId), siteId, grams]);
    };
    expect(await left(many)).toEqual([['SP-1', many.millLane, 1000]]);
    expect(await left(few)).toEqual([['NEW-110', few.quarry, 1000]]);
  });

  it('is of the whole network where the site has nothing of its own', async () => {
    const [nobody] = (
      await readAs(many.coordinator, ({ db }) => db.site.findMany({ where: { code: 'G-050' } }))
    ).map(({ id }) => id);
    const there = await offered(many, nobody ?? '');
    expect(there.sites.map(({ name }) => name)).toEqual(['Garden 050']);
    expect(codes(there.runs)).toEqual(down('QUARRY', 70, 11));
    expect(codes(there.substrateLots)).not.toContain('STRAW-1');
  });

  it('names as who started it only people of the site', async () => {
    const names = async (site: string) => (await offered(many, site)).colleagues.map(({ name }) => name);
    expect(await names(many.millLane)).toContain('Ives Marrow');
    expect(await names(many.millLane)).not.toContain('Posy Underhill');
    expect(await names(many.quarry)).toContain('Posy Underhill');
  });
});

describe('what a new batch can be made of, where all sites are listed', () => {
  it('is the latest of the network, whichever site the address asks for', async () => {
    const asked = await offered(few, few.millLane);
    expect(codes(asked.runs)).toEqual(down('QUARRY', 70, 11));
    expect(codes(asked.substrateLots)).not.toContain('STRAW-1');
    expect(codes(asked.spawnLots)).not.toContain('SP-1');
    expect(asked).toEqual(await offered(few, null));
    expect(asked.colleagues.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Ives Marrow', 'Posy Underhill']),
    );
  });

  it('is for a member of a large network the same', async () => {
    const own = await offered(many, many.millLane, many.member);
    expect(codes(own.runs)).toEqual(['QUARRY-1', 'MILL-2', 'MILL-1', 'BATH-1']);
    expect(codes(own.substrateLots)).not.toContain('STRAW-1');
  });
});

describe('the batches of a site', () => {
  it('come first among those that can give units, and the last one there is offered to be repeated', async () => {
    const of = stock.get(many);
    if (of === undefined) throw new Error('no shed');
    const started = { ...many, member: many.coordinator };
    const mill = await startBags(started, of);
    const quarry = await startBags(started, of, { siteId: many.quarry, inoculatedOn: '2026-04-20' });
    const { coordinator } = many;
    const sources = async (at?: string) =>
      (await readAs(coordinator, (context) => listSourceBatches(context, at))).map(({ id }) => id);
    expect(await sources()).toEqual([quarry, mill]);
    expect(await sources(many.millLane)).toEqual([mill, quarry]);
    const last = (at?: string) =>
      readAs(coordinator, async (context) => (await findLastStarted(context, at))?.id);
    expect(await last()).toBe(quarry);
    expect(await last(many.millLane)).toBe(mill);
  });
});
