import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { readAnswers } from '@/lib/analysis/programme/read-answers';
import { readPractices } from '@/lib/analysis/programme/read-practices';
import { readSales, totalByCurrency } from '@/lib/analysis/programme/read-sales';
import { readTrainings } from '@/lib/analysis/programme/read-trainings';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { addPerson, adopt, idOf, sell, train } from '../../records/programme/programme-records';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';

const { superuser } = await testDatabase();
const april = { from: '2026-04-01', to: '2026-04-30' };
let tag = 0;
const newNetwork = () => {
  tag += 1;
  return growers(superuser, String(tag));
};

describe('the trainings of a period', () => {
  it('count a person who came twice once among people and twice among attendances', async () => {
    const { coordinator, member, millLane, quarry } = await newNetwork();
    const one = idOf(await addPerson(member, millLane, 'Rue Alder'));
    const two = idOf(await addPerson(member, millLane, 'Sage Birch'));
    idOf(
      await train(coordinator, millLane, { heldOn: '2026-04-01', headCount: '', participants: [one, two] }),
    );
    idOf(await train(coordinator, quarry, { heldOn: '2026-04-30', headCount: '', participants: one }));
    idOf(await train(coordinator, quarry, { heldOn: '2026-05-01', headCount: '', participants: two }));
    const found = await readAs(coordinator, (context) => readTrainings(context, april));
    expect(found).toMatchObject({ trainings: 2, attendances: 3, people: 2, unnamedHeads: 0 });
    expect(found.bySite).toHaveLength(2);
    expect(found.bySite.find(({ siteId }) => siteId === quarry)).toMatchObject({ people: 1, attendances: 1 });
  });

  it('count heads beyond the names apart, and leave out who has not agreed to be counted', async () => {
    const { coordinator, member, millLane } = await newNetwork();
    const yes = idOf(await addPerson(member, millLane, 'Tansy Cole'));
    const no = idOf(await addPerson(member, millLane, 'Umber Dale', { consents: '', agreedOn: '' }));
    idOf(await train(member, millLane, { heldOn: '2026-04-02', headCount: '10', participants: [yes, no] }));
    idOf(await train(member, millLane, { heldOn: '2026-04-03', headCount: '', participants: [yes, no] }));
    const found = await readAs(coordinator, (context) => readTrainings(context, april));
    expect(found).toMatchObject({
      ...{ trainings: 2, attendances: 11, people: 1, unnamedHeads: 9, leftOutWithoutConsent: 1 },
    });
  });

  it('leave out a voided one', async () => {
    const { coordinator, member, millLane } = await newNetwork();
    const id = idOf(await train(member, millLane, { heldOn: '2026-04-02' }));
    const raw = { kind: 'training', id, revision: 1, reason: 'never held' };
    expect((await runAs(member, voidRecordInput, voidRecord, raw)).kind).toBe('ok');
    const found = await readAs(coordinator, (context) => readTrainings(context, april));
    expect(found).toMatchObject({ trainings: 0, attendances: 0, people: 0, bySite: [] });
  });
});

describe('answers before and after', () => {
  it('of one wording and scale are put together over trainings, and a mean without answers is not given', async () => {
    const { coordinator, member, millLane, quarry } = await newNetwork();
    const ask = (siteId: string, row: object, heldOn = '2026-04-04') =>
      train(coordinator, siteId, { heldOn, questions: [{ wording: 'I can', scaleMost: '5', ...row }] });
    idOf(await ask(millLane, { before: '1 2', after: '4' }));
    idOf(await ask(quarry, { wording: 'i can ', before: '3', after: '5 3' }));
    idOf(await ask(quarry, { scaleMost: '4', before: '2' }));
    const [first, second, ...others] = await readAs(member, (context) => readAnswers(context, april));
    // The member sees Mill Lane only.
    expect(first).toMatchObject({ nBefore: 2, meanBefore: 1.5, nAfter: 1, meanAfter: 4, change: 2.5 });
    expect([second, ...others]).toEqual([undefined]);
    const all = await readAs(coordinator, (context) => readAnswers(context, april));
    expect(all).toHaveLength(2);
    expect(all[0]).toMatchObject({
      ...{
        trainings: 2,
        before: [1, 1, 1, 0, 0],
        meanBefore: 2,
        after: [0, 0, 1, 1, 1],
        meanAfter: 4,
        change: 2,
      },
      siteIds: [millLane, quarry],
    });
    expect(all[1]).toMatchObject({ scaleMost: 4, nAfter: 0, meanAfter: null, change: null });
  });
});

describe('sales and practices of a period', () => {
  it('add up by site, outlet and currency in whole grams and cents', async () => {
    const { coordinator, member, millLane } = await newNetwork();
    idOf(await sell(member, millLane, { soldOn: '2026-04-01', customers: '4' }));
    idOf(await sell(member, millLane, { soldOn: '2026-04-30', amount: '0.10', mass: 100 }));
    idOf(await sell(member, millLane, { soldOn: '2026-04-30', outlet: 'shop' }));
    idOf(await sell(member, millLane, { soldOn: '2026-05-01' }));
    const sales = await readAs(coordinator, (context) => readSales(context, april));
    expect(sales).toEqual([
      {
        ...{
          siteId: millLane,
          outlet: 'farm_gate',
          currency: 'USD',
          sales: 2,
          grams: 1000,
          amountMinor: 960,
        },
        ...{ customers: 4, salesWithCustomers: 1 },
      },
      expect.objectContaining({ outlet: 'shop', grams: 900, amountMinor: 950 }),
    ]);
    expect(totalByCurrency(sales)).toEqual([{ currency: 'USD', sales: 3, grams: 1900, amountMinor: 1910 }]);
  });

  it('count a site once a practice, as taken up within the period or standing at its end', async () => {
    const { coordinator, member, millLane, quarry } = await newNetwork();
    idOf(await adopt(member, millLane, { since: '2026-04-01', growers: '3' }));
    idOf(await adopt(member, millLane, { since: '2026-04-09' }));
    idOf(await adopt(coordinator, quarry, { since: '2026-01-01' }));
    idOf(
      await adopt(coordinator, quarry, { practice: 'own_spawn', since: '2026-01-01', until: '2026-03-31' }),
    );
    idOf(
      await adopt(coordinator, quarry, { practice: 'composting', since: '2026-04-02', until: '2026-04-29' }),
    );
    const found = await readAs(coordinator, (context) => readPractices(context, april));
    expect(found).toEqual(
      expect.arrayContaining([
        {
          ...{ practice: 'hygiene', adoptedAt: [millLane], growers: 3, withoutGrowers: 1 },
          standingAt: expect.arrayContaining([millLane, quarry]),
        },
        { practice: 'composting', adoptedAt: [quarry], standingAt: [], growers: 0, withoutGrowers: 1 },
      ]),
    );
    expect(found.map(({ practice }) => practice)).not.toContain('own_spawn');
  });
});
