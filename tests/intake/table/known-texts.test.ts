import { beforeAll, describe, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { openPoints } from '@/lib/intake/table/open-points';
import { findReferences } from '@/lib/intake/table/references';
import { settlePoints } from '@/lib/intake/table/settle';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const lines = (...rows: string[]) => rows.join('\n');
const head = 'Batch,Species,Container,Units,Inoculated,Substrate,Treatment';
const row = (code: string, { lot = 'STRAW-1', treatment = 'steam', species = 'Pleurotus ostreatus' }) =>
  `${code},${species},bag,12,2026-04-02,${lot},${treatment}`;
const asked = () => ({ kind: 'batches', siteId: people.millLane, now }) as const;

describe('a text that was chosen to stand for something', () => {
  it('is known in the next table of the site, with other columns and of another kind', async () => {
    const first = await bring(people.member, asked(), lines(head, row('KNT-1', { lot: 'straw of barn 3' })));
    await first.check();
    const chosen = { 'substrateLot STRAW OF BARN 3': stock.straw, 'substrateLot THE STRAW': stock.straw };
    await settlePoints(people.member, first.id, { ...chosen, 'species GREY ONES': stock.oyster }, []);
    await first.check();
    // Tables between them in which nobody chose anything take nothing of it away.
    await (await bring(people.member, asked(), lines(head, row('KNT-2', {})))).check();
    const next = lines(
      `Weather,${head}`,
      `wet,${row('KNT-3', { lot: 'straw of barn 3', species: 'grey ones' })}`,
    );
    for (const kind of ['batches', 'notebook'] as const) {
      const file = await bring(people.member, { ...asked(), kind }, next);
      expect((await file.check()).counts).toMatchObject({ new: 1, needs: 0 });
    }
    // A plain word for a lot means another one the next time.
    const plain = await bring(people.member, asked(), lines(head, row('KNT-5', { lot: 'the straw' })));
    await plain.check();
    expect(await plain.wrong()).toContainEqual([2, 'components.0.lotId', 'intake-unknown']);
    const elsewhere = await bring(people.coordinator, { ...asked(), siteId: people.quarry }, next);
    await elsewhere.check();
    expect(await elsewhere.wrong()).toContainEqual([2, 'components.0.lotId', 'intake-unknown']);
  });

  it('is shown with what it stands for, and is asked about again where that is taken away', async () => {
    const file = await bring(people.member, asked(), lines(head, row('KNT-6', { species: 'grey ones' })));
    await file.check();
    const { chosen } = await readAs(people.member, (context) => openPoints(context, file.id));
    expect(chosen).toEqual([
      { key: 'species GREY ONES', field: 'species', text: 'grey ones', value: stock.oyster },
    ]);
    await settlePoints(people.member, file.id, { 'species GREY ONES': '' }, []);
    await file.check();
    expect(await file.wrong()).toEqual([[2, 'speciesId', 'intake-unknown']]);
  });
});

describe('what growers call things', () => {
  it.each([
    ['species', 'Oyster', true],
    ['species', 'ostra', true],
    ['species', 'straw', false],
    ['method', 'Steamed', true],
    ['method', 'al vapor', true],
    ['method', 'prayer', false],
  ] as const)('as %s, %s is known: %s', async (of, text, known) => {
    const find = await readAs(people.member, (context) => findReferences(context, of, [text]));
    expect(typeof find(text) === 'string').toBe(known);
  });
});

describe('what is offered for a text that is not known', () => {
  it('are methods first, runs of the site alone, and lots with what they are and when they came', async () => {
    const unknown = row('KNT-4', { lot: 'wheat straw', treatment: 'my way' });
    for (const [siteId, code] of [
      [people.millLane, 'RUN-HERE'],
      [people.quarry, 'RUN-THERE'],
    ] as const) {
      const raw = { siteId, code, methodId: stock.steam, startedAt: '2026-06-01T08:00:00Z' };
      const run = await runAs(people.coordinator, startTreatmentInput, startTreatment, raw, { now });
      expect(run.kind).toBe('ok');
    }
    const file = await bring(people.coordinator, asked(), lines(head, unknown));
    await file.check();
    const { choices } = await readAs(people.coordinator, (context) => openPoints(context, file.id));
    const treatments = choices.get('treatment MY WAY');
    const lots = choices.get('substrateLot WHEAT STRAW');
    if (treatments?.kind !== 'records' || lots?.kind !== 'records') throw new Error('nothing to choose');
    const isMethod = treatments.options.map(({ value }) => value.startsWith('method:'));
    expect(isMethod).toEqual([...isMethod].sort((a, b) => Number(b) - Number(a)));
    expect(isMethod[0]).toBe(true);
    const runs = treatments.options.filter(({ value }) => value.startsWith('run:'));
    expect(runs.map(({ label }) => label)).toEqual(['RUN-HERE', 'BATH-1']);
    expect(runs[0]).toMatchObject({ about: expect.any(String), on: '2026-06-01' });
    expect(lots.options[0]).toMatchObject({
      label: 'STRAW-1',
      about: expect.stringMatching(/straw/i),
      on: expect.any(String),
    });
  });
});

describe('a line of sums', () => {
  it('is left out of the rows and told, and a line with more than sums in it is not', async () => {
    const table = lines(
      head,
      row('SUM-1', {}),
      'TOTAL,,,12,,,',
      'Total,Pleurotus ostreatus,bag,12,2026-04-02,STRAW-1,steam',
    );
    const file = await bring(people.member, asked(), table);
    const { totals, counts } = await file.look();
    expect(totals).toEqual([3]);
    expect(counts.unread).toBe(2);
    expect(await file.wrong()).toEqual([]);
  });
});
