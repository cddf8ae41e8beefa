import { describe, expect, it } from 'vitest';
import type { SiteSales } from '@/lib/analysis/programme/read-sales';
import { carryOver } from '@/lib/report/content/carry-over';
import { changeRows } from '@/lib/report/content/change-rows';
import { practicePart } from '@/lib/report/content/practice-part';
import { salesPart } from '@/lib/report/content/sales-part';
import { trainingsTold } from '@/lib/report/content/training-part';
import { rule } from './random-network';
import { evenYear, yearReport } from './year-report';

const sites = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];

const sale = (siteId: string, more: Partial<SiteSales> = {}): SiteSales => ({
  ...{ siteId, outlet: 'farm_gate', currency: 'USD', sales: 2, grams: 4_000 },
  ...{ amountMinor: 3_000, customers: 10, salesWithCustomers: 1 },
  ...more,
});

describe('sales in a report', () => {
  it('are told by outlet and in all where five sites sold, each currency apart', () => {
    const rows = [...sites.map((site) => sale(site)), sale('a', { currency: 'CAD' })];
    const [cad, usd] = salesPart(rows, rule).content.sales;
    expect(usd).toMatchObject({ currency: 'USD', sales: 16, salesWithCustomers: 8 });
    expect(usd?.outlets.total).toMatchObject({ amount: 24_000, sites: 8 });
    expect(cad?.outlets.total).toEqual({ key: 'total', kind: 'protected' });
    expect(cad).not.toHaveProperty('sales');
  });

  it('change by a percentage of the baseline, and by none where nothing was sold then', () => {
    const nothing = { total: { key: 'total', kind: 'shown' as const, amount: 0, sites: 0 }, cells: [] };
    const totals = (rows: readonly SiteSales[]) => ({
      ...{ harvest: nothing, residues: nothing },
      sales: salesPart(rows, rule).content.sales,
    });
    const now = totals(sites.map((site) => sale(site)));
    const half = totals(sites.map((site) => sale(site, { amountMinor: 1_500 })));
    const ofSales = (before: ReturnType<typeof totals>) =>
      changeRows(before, now).find(({ key }) => key === 'sales');
    expect(ofSales(half)).toMatchObject({ currency: 'USD', change: { kind: 'percent', percent: 100 } });
    expect(ofSales(totals([]))?.change).toEqual({ kind: 'no-baseline' });
    expect(ofSales(totals([sale('a')]))?.change).toEqual({ kind: 'protected' });
  });
});

describe('practices in a report', () => {
  const adopted = (adoptedAt: string[], standingAt: string[]) =>
    practicePart([], [{ practice: 'hygiene', adoptedAt, standingAt, growers: 9, withoutGrowers: 0 }], rule)
      .content.adopted[0];

  it('are told from five sites on', () => {
    expect(adopted(sites.slice(0, 4), sites.slice(0, 4))).toMatchObject({
      adopted: { kind: 'protected' },
      growers: { kind: 'protected' },
    });
    expect(adopted(sites.slice(0, 5), sites.slice(0, 5))).toMatchObject({
      adopted: { amount: 5 },
      standing: { amount: 5 },
      growers: { people: 9 },
    });
  });

  it('do not tell where they stand when that, less where they were taken up, is a few sites', () => {
    expect(adopted(sites.slice(0, 5), sites)).toMatchObject({
      adopted: { amount: 5 },
      standing: { kind: 'protected' },
    });
  });
});

describe('trainings in a report', () => {
  const trainings = (people: number, attendances: number) =>
    trainingsTold(
      {
        ...{ trainings: 2, attendances, people, unnamedHeads: 0, leftOutWithoutConsent: 1 },
        minutes: 120,
        bySite: [],
      },
      [
        {
          ...{
            wording: 'Can you?',
            scaleMost: 5,
            leastLabel: null,
            mostLabel: null,
            trainings: 1,
            siteIds: ['a'],
          },
          ...{ before: [4, 0, 0, 0, 0], after: [0, 0, 0, 0, 6], nBefore: 4, nAfter: 6 },
          ...{ meanBefore: 1, meanAfter: 5, change: 4 },
        },
      ],
      rule,
    );

  it('count a person once and an attendance each time, from five people on', () => {
    expect(trainings(7, 12)).toMatchObject({ people: { people: 7 }, attendances: { people: 12 } });
    expect(trainings(4, 8)).toMatchObject({ people: { kind: 'protected' }, attendances: { people: 8 } });
  });

  it('keep back what fewer than five answered before or after', () => {
    expect(trainings(7, 12).answers).toMatchObject([{ answers: { kind: 'protected' } }]);
  });
});

describe('answers in two versions of a report', () => {
  const told = (nAfter: number, meanAfter: number, nBefore = 10) => {
    const shown = { kind: 'shown' as const, nBefore, nAfter, meanBefore: 2.5, meanAfter, change: null };
    const question = { wording: 'Can you?', scaleMost: 5, leastLabel: null, mostLabel: null };
    const none = { kind: 'shown' as const, people: 0 };
    const report = yearReport(2026, evenYear, undefined, ['trainings']);
    const trainings = {
      ...{ trainings: 2, attendances: none, people: none, unnamedHeads: none, leftOutWithoutConsent: 0 },
      answers: [{ ...question, answers: shown }],
    };
    return { ...report, content: { ...report.content, trainings } };
  };
  const first = { ...told(10, 4), version: 1 };
  const kept = (later: ReturnType<typeof told>) => carryOver(later, [first]).content.carried;

  it('stand as before where fewer than five answers were added, or one was changed', () => {
    expect([kept(told(11, 4)), kept(told(6, 4)), kept(told(10, 4.1)), kept(told(10, 4, 12))]).toEqual(
      Array.from({ length: 4 }, () => ({ trainings: 1 })),
    );
  });

  it('are told anew from five more on, and where nothing changed', () => {
    expect([kept(told(15, 4.2)), kept(told(10, 4))]).toEqual([{}, {}]);
  });
});
