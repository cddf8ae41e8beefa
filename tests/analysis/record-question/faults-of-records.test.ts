import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { readRecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import { readRuns } from '@/lib/analysis/record-question/read-runs';
import type { FaultKind } from '@/lib/analysis/record-question/record-fault';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
}, 120_000);
afterAll(() => admin.end());

const faultsOf = async (kind: FaultKind, since?: string) => {
  const found = await readRecordFaults(people.coordinator, now, since === undefined ? {} : { since });
  return found?.faults.flatMap((fault) => (fault.kind === kind ? [{ id: fault.id, on: fault.on }] : []));
};

const write = (columns: string, values: string, batchId: string) =>
  admin.query(
    `insert into ${columns.replace('(', '(network_id, site_id, batch_id, ')}
     select network_id, site_id, id, ${values} from batch where id = $1`,
    [batchId],
  );

describe('a batch of which nothing was written', () => {
  it('is quiet from thirty days after the latest entry, of whatever kind, until one is younger', async () => {
    const batchId = await startBags(people, stock);
    const quiet = () => faultsOf('quiet');
    expect(await quiet()).toEqual([{ id: batchId, on: '2026-05-01' }]);
    await write('look (looked_on)', `'2026-04-20'`, batchId);
    expect(await quiet()).toEqual([{ id: batchId, on: '2026-05-20' }]);
    await write('loss (lost_on, units, cause)', `'2026-05-02', 1, 'dried_out'`, batchId);
    expect(await quiet()).toEqual([{ id: batchId, on: '2026-06-01' }]);
    await write('"check" (checked_on, kind)', `'2026-05-12', 'pins_seen'`, batchId);
    expect(await quiet()).toEqual([{ id: batchId, on: '2026-06-11' }]);
    // The picking after those pins would still be awaited on the day after.
    await write('"check" (checked_on, kind)', `'2026-06-20', 'pins_seen'`, batchId);
    expect(await quiet()).toEqual([{ id: batchId, on: '2026-07-20' }]);
    await write('look (looked_on)', `'2026-06-21'`, batchId);
    expect(await quiet()).toEqual([]);
  });
});

describe('a harvest', () => {
  it('is told as without destination, and as too heavy, on its day; not where only later days are asked for', async () => {
    const batchId = await startBags(people, stock, { inoculatedOn: '2026-04-02' });
    const { rows } = await admin.query<{ id: string }>(
      `with harvest as (insert into weighing (network_id, site_id, weighed_on, fresh_grams, trim_state)
         select network_id, site_id, '2026-05-05', 150000, 'trimmed' from batch where id = $1 returning *)
       insert into weighing_line (network_id, site_id, batch_id, weighing_id, fresh_grams, flush)
         select network_id, site_id, $1, id, 150000, 1 from harvest returning weighing_id as id`,
      [batchId],
    );
    const id = rows[0]?.id;
    expect(await faultsOf('no-destination')).toEqual([{ id, on: '2026-05-05' }]);
    expect(await faultsOf('weighing-heavy')).toEqual([{ id, on: '2026-05-05' }]);
    expect(await faultsOf('weighing-heavy', '2026-05-05')).toEqual([{ id, on: '2026-05-05' }]);
    expect(await faultsOf('weighing-heavy', '2026-05-06')).toEqual([]);
  });
});

describe('the treatment runs of a period', () => {
  const days = { from: '2026-03-30', to: '2026-04-30' };
  const runs = (actor: Actor, period = days) => readAs(actor, (context) => readRuns(context, period, now));

  it('come with the day of their first filling and their readings held against the window of their method', async () => {
    const bare = await runs(people.coordinator);
    expect(bare).toMatchObject([
      {
        id: stock.bathRun,
        code: 'BATH-1',
        startedOn: '2026-03-30',
        endedOn: null,
        firstFilledOn: '2026-04-01',
      },
    ]);
    expect(bare[0]?.judgement).toMatchObject({ kind: 'heat', check: { kind: 'cannot-compute' } });
    await admin.query('update treatment_run set ended_at = $2 where id = $1', [
      stock.bathRun,
      '2026-03-30T15:30:00Z',
    ]);
    // Written in another order than read: an hour and a half at 70 degrees.
    for (const at of ['15:00', '14:30', '15:30', '14:00'])
      await admin.query(
        `insert into treatment_reading (network_id, site_id, treatment_run_id, read_at, place, celsius)
         select network_id, site_id, id, $2, 'load_middle', 70.5 from treatment_run where id = $1`,
        [stock.bathRun, `2026-03-30T${at}:00Z`],
      );
    const [read] = await runs(people.coordinator);
    expect(read).toMatchObject({ endedOn: '2026-03-30' });
    expect(read?.judgement).toMatchObject({
      kind: 'heat',
      check: { kind: 'value', value: { verdict: 'as_planned', minutesInWindow: 90 } },
    });
  });

  it('are for a member those of the own sites, and of other days none', async () => {
    expect(await runs(people.member)).toHaveLength(1);
    expect(await runs(people.neighbour)).toEqual([]);
    expect(await runs(people.coordinator, { from: '2026-04-02', to: '2026-04-30' })).toEqual([]);
  });
});
