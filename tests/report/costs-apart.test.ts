import { expect, it } from 'vitest';
import { type CostedBatch, costGroup } from '@/lib/analysis/costs/cost-group';
import type { CostsAnswer } from '@/lib/analysis/costs/read-costs';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { costPart } from '@/lib/report/content/cost-part';
import { partsThatTell } from '@/lib/report/content/parts-that-tell';
import { rule } from './random-network';
import { evenYear, yearReport } from './year-report';

const batch = (siteId: string): CostedBatch => ({
  ...{ id: siteId, siteId, method: 'lime', run: siteId, freshGrams: 2000, soldMinorPerKg: 900 },
  cost: { kind: 'full', minor: 600, labourMinutes: 90 },
});
const batches = Object.keys(evenYear).map(batch);

function reportOf(costed: readonly CostedBatch[]): BuiltReport {
  const period = { from: '2026-01-01', to: '2026-12-31' };
  const answer: CostsAnswer = {
    ...{ period, currency: 'USD', labourMinorPerHour: null, batches: 7, fullBatches: 7, missing: [] },
    ...{ methods: [costGroup('lime', costed, 'site')], sites: [], all: costGroup('all', costed, 'site') },
    ...{ methodNames: new Map(), siteNames: new Map() },
  };
  const { content, ground } = costPart(answer, {}, rule);
  const report = yearReport(2026, evenYear, undefined, ['costs']);
  return { content: { ...report.content, ...content }, ground: { ...report.ground, costs: ground } };
}

const told = (change: (one: CostedBatch) => CostedBatch, sites: number) =>
  partsThatTell(reportOf(batches), reportOf(batches.map((one, at) => (at < sites ? change(one) : one)))).has(
    'costs',
  );

it('what one site was paid, or how long it worked, is not told by two versions of the costs', () => {
  const paid = (one: CostedBatch) => ({ ...one, soldMinorPerKg: 1200 });
  const worked = (one: CostedBatch): CostedBatch => ({
    ...one,
    cost: { kind: 'full', minor: 600, labourMinutes: 120 },
  });
  expect([told(paid, 1), told(worked, 1)]).toEqual([true, true]);
  expect([told(paid, 7), told(worked, 7), told((one) => one, 7)]).toEqual([false, false, false]);
});
