import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { correctSale } from '@/lib/records/sale/correct-sale.command';
import { getSale } from '@/lib/records/sale/get-sale.query';
import { listSales } from '@/lib/records/sale/list-sales.query';
import { correctSaleInput } from '@/lib/records/sale/sale.input';
import { changeMoney } from '@/lib/records/settings/change-money.command';
import { getMoney } from '@/lib/records/settings/get-money.query';
import { changeMoneyInput } from '@/lib/records/settings/money.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf } from '../../support/shed';
import { idOf, sell } from './programme-records';

const { superuser } = await testDatabase();
const { coordinator, member, neighbour, millLane } = await growers(superuser);

const see = (id: string) => readAs(member, (context) => getSale(context, id));
const correct = (raw: object) => runAs(member, correctSaleInput, correctSale, raw, { now: testDay });

describe('a sale', () => {
  it('keeps its amount in whole cents of the currency of the network', async () => {
    const id = idOf(await sell(member, millLane, { amount: '$9.50', mass: { text: '2', unit: 'lb' } }));
    expect(await see(id)).toMatchObject({ price: { minor: 950, currency: 'USD' }, grams: 907 });
  });

  it('that is sent twice is kept once', async () => {
    const id = newId();
    await sell(member, millLane, { id });
    expect(idOf(await sell(member, millLane, { id }))).toBe(id);
    expect(await historyOf(coordinator, id)).toHaveLength(1);
  });

  it('of tomorrow, finer than a cent, or of nothing is refused', async () => {
    expect(await sell(member, millLane, { soldOn: '2026-05-21' })).toMatchObject({
      errors: [{ field: 'soldOn', code: 'future-date' }],
    });
    expect(await sell(member, millLane, { amount: '9.505' })).toMatchObject({
      errors: [{ field: 'amount', code: 'money-too-fine' }],
    });
    expect(await sell(member, millLane, { mass: 0 })).toMatchObject({ errors: [{ field: 'mass' }] });
  });

  it("of another site is not there, and cannot be recorded for one's neighbours", async () => {
    const id = idOf(await sell(member, millLane));
    expect(await readAs(neighbour, (context) => getSale(context, id))).toBeUndefined();
    expect((await sell(neighbour, millLane)).kind).toBe('not-found');
  });

  it('is put right with a reason, and a stale form meets a conflict', async () => {
    const id = idOf(await sell(member, millLane));
    const raw = {
      id,
      revision: 1,
      reason: 'misread',
      soldOn: '2026-05-10',
      outlet: 'shop',
      mass: 800,
      amount: 8,
    };
    expect((await correct(raw)).kind).toBe('ok');
    expect(await correct(raw)).toEqual({ kind: 'conflict', current: 2 });
    expect(await see(id)).toMatchObject({ outlet: 'shop', price: { minor: 800 } });
    expect(await historyOf(coordinator, id)).toHaveLength(2);
  });

  it('keeps its currency when the network chooses another', async () => {
    const id = idOf(await sell(member, millLane));
    const { revision = 0 } = (await readAs(coordinator, getMoney)) ?? {};
    const change = (currency: string, at: number) =>
      runAs(coordinator, changeMoneyInput, changeMoney, {
        ...{ revision: at, reason: 'moved', currency, labourPerHour: '1500' },
      });
    expect((await change('JPY', revision)).kind).toBe('ok');
    const yen = idOf(await sell(member, millLane, { amount: '950' }));
    expect(await see(yen)).toMatchObject({ price: { minor: 950, currency: 'JPY' } });
    expect(await see(id)).toMatchObject({ price: { minor: 950, currency: 'USD' } });
    expect(await sell(member, millLane, { amount: '9.5' })).toMatchObject({
      errors: [{ code: 'money-too-fine', values: { currency: 'JPY' } }],
    });
    await change('USD', revision + 1);
  });
});

describe('the list of sales', () => {
  it('is paged by day and filtered by outlet', async () => {
    for (let day = 1; day <= 9; day += 1)
      await sell(member, millLane, { outlet: 'food_hub', soldOn: `2026-04-0${day}` });
    const filter = programmeFilterInput.parse({ outlet: 'food_hub', from: '2026-04-03' });
    const { sales, next } = await readAs(member, (context) => listSales(context, filter));
    expect(sales.map(({ soldOn }) => soldOn)[0]).toBe('2026-04-09');
    expect(sales).toHaveLength(7);
    expect(next).toBeUndefined();
    const later = programmeFilterInput.parse({
      outlet: 'food_hub',
      after: `2026-04-05_${sales.find(({ soldOn }) => soldOn === '2026-04-05')?.id}`,
    });
    const rest = await readAs(member, (context) => listSales(context, later));
    expect(rest.sales.map(({ soldOn }) => soldOn)).toEqual([
      '2026-04-04',
      '2026-04-03',
      '2026-04-02',
      '2026-04-01',
    ]);
  });
});
