import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CostedBatch, costGroup } from '@/lib/analysis/costs/cost-group';
import type { MethodFigures } from '@/lib/analysis/production/read-method-figures';
import { singleBatchContamination } from '@/lib/analysis/single-batch-contamination';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import { costPart } from '@/lib/report/content/cost-part';
import { methodPart } from '@/lib/report/content/method-part';
import { practicePart } from '@/lib/report/content/practice-part';
import { rule } from './random-network';
import { evenYear, yearReport } from './year-report';

const lastDay = 12;
const methods = ['lime', 'steam'] as const;

/** A batch as its site made it on a day: closed, judged and weighed. */
type Made = {
  readonly siteId: string;
  readonly day: number;
  readonly method: (typeof methods)[number];
  readonly units: number;
};
type Stretch = { readonly first: number; readonly last: number };

const stretch = fc
  .tuple(fc.integer({ min: 1, max: lastDay }), fc.integer({ min: 1, max: lastDay }))
  .map(([one, other]): Stretch => ({ first: Math.min(one, other), last: Math.max(one, other) }));

const made = (sites: number) =>
  fc.record({
    siteId: fc.integer({ min: 1, max: sites }).map((site) => `site ${site}`),
    day: fc.integer({ min: 1, max: lastDay }),
    method: fc.constantFrom(...methods),
    units: fc.integer({ min: 5, max: 30 }),
  });

const story = fc.integer({ min: 5, max: 14 }).chain((sites) =>
  fc.record({
    rows: fc.array(made(sites), { minLength: 30, maxLength: 150 }),
    stretches: fc.array(stretch, { minLength: 2, maxLength: 4 }),
  }),
);

const inside = (rows: readonly Made[], { first, last }: Stretch) =>
  rows.filter(({ day }) => day >= first && day <= last);

function bySite(rows: readonly Made[]) {
  const sums = new Map<string, number>();
  for (const { siteId, units } of rows) sums.set(siteId, (sums.get(siteId) ?? 0) + units);
  return sums;
}

const amounts = (rows: readonly Made[]) => [...bySite(rows)].map(([siteId, grams]) => ({ siteId, grams }));

const figure = singleBatchContamination({ contaminatedUnits: 1, inoculatedUnits: 9, asOf: '' });
const dayOf = (day: number) => `2025-05-${String(day).padStart(2, '0')}`;

/** A report over a stretch whose practices, costs and methods are made of its batches. */
function built(rows: readonly Made[], days: Stretch): BuiltReport {
  const own = inside(rows, days);
  const of = (method: string) => own.filter((row) => row.method === method);
  const figures = methods.map((methodKey): MethodFigures => {
    const grams = amounts(of(methodKey));
    return {
      ...{ container: 'bag', methodKey, methodEn: methodKey, methodEs: methodKey },
      ...{ contamination: figure, yield: figure },
      ...{ unitsBySite: grams, yieldBySite: grams, contaminatedBySite: grams, freshBySite: grams },
    };
  });
  const costed = own.map(
    ({ siteId, method, units }, at): CostedBatch => ({
      ...{ id: String(at), siteId, method, run: String(at), freshGrams: units, soldMinorPerKg: null },
      cost: { kind: 'full', minor: units, labourMinutes: 0 },
    }),
  );
  const costs = costPart(
    {
      ...{ period: { from: dayOf(days.first), to: dayOf(days.last) }, currency: 'USD' },
      ...{ labourMinorPerHour: null, batches: own.length, fullBatches: own.length, missing: [] },
      methods: methods.map((one) =>
        costGroup(
          one,
          costed.filter(({ method }) => method === one),
          'site',
        ),
      ),
      ...{ sites: [], all: costGroup('all', costed, 'site'), methodNames: new Map(), siteNames: new Map() },
    },
    {},
    rule,
  );
  const taken = methods.flatMap((methodId) =>
    [...bySite(of(methodId)).keys()].map((siteId) => ({ siteId, methodId, methodEn: '', methodEs: '' })),
  );
  const practices = practicePart(taken, [], rule);
  const told = methodPart(figures, rule);
  const report = yearReport(2025, evenYear, undefined, ['practices', 'costs', 'methods']);
  return {
    content: {
      ...{ ...report.content, ...practices.content, ...costs.content, ...told.content },
      ...{ from: dayOf(days.first), to: dayOf(days.last) },
    },
    ground: { practices: practices.ground, costs: costs.ground, methods: told.ground },
  };
}

/** Whether a difference by site is that of few: written down anew. */
function few(first: ReadonlyMap<string, number>, second: ReadonlyMap<string, number>): boolean {
  const apart = [...new Set([...first.keys(), ...second.keys()])]
    .map((site) => Math.abs((first.get(site) ?? 0) - (second.get(site) ?? 0)))
    .filter((amount) => amount > 0)
    .sort((a, b) => b - a);
  const all = apart.reduce((sum, amount) => sum + amount, 0);
  const topTwo = (apart[0] ?? 0) + (apart[1] ?? 0);
  return apart.length > 0 && (apart.length < rule.minSites || 100 * topTwo >= rule.topTwoPercent * all);
}

/** Which numbers about a method a report tells. */
function told({ content }: BuiltReport, method: string) {
  const at = ['lime', 'steam'].indexOf(method);
  const shown = (cell: { readonly kind: string } | undefined) =>
    cell !== undefined && cell.kind !== 'protected';
  return {
    methods: shown(content.methods[at]?.contamination),
    costs: shown(content.costs?.methods[at]?.cost),
    practices: shown(content.practices.find(({ sites }) => sites.key === method)?.sites),
  };
}

const share = (one: Stretch, other: Stretch) => one.first <= other.last && other.first <= one.last;
const ones = (sums: ReadonlyMap<string, number>) => new Map([...sums.keys()].map((site) => [site, 1]));

describe('practices, costs and methods of reports over days that overlap', { timeout: 90_000 }, () => {
  it('tell nothing of few sites when one is taken off the other', () => {
    const held = { methods: 0, costs: 0, practices: 0 };
    const shown = { methods: 0, costs: 0, practices: 0 };
    fc.assert(
      fc.property(story, ({ rows, stretches }) => {
        const seen: (BuiltReport & { version: number; days: Stretch })[] = [];
        const wrong: unknown[] = [];
        for (const days of stretches) {
          const plain = built(rows, days);
          const report = carryOver(plain, seen);
          expect(tellsBeside(report, seen)).toBe(false);
          for (const method of methods) {
            const [now, before] = [told(report, method), told(plain, method)];
            for (const part of ['methods', 'costs', 'practices'] as const) {
              if (before[part] && !now[part]) held[part] += 1;
              if (now[part] && seen.length > 0) shown[part] += 1;
            }
            const own = bySite(inside(rows, days).filter((row) => row.method === method));
            for (const earlier of seen.filter((one) => share(one.days, days))) {
              const then = bySite(inside(rows, earlier.days).filter((row) => row.method === method));
              const [lately, once] = [told(report, method), told(earlier, method)];
              if (few(own, then) && lately.methods && once.methods) wrong.push(['methods', days]);
              if (few(own, then) && lately.costs && once.costs) wrong.push(['costs', days]);
              if (few(ones(own), ones(then)) && lately.practices && once.practices)
                wrong.push(['practices', days]);
            }
          }
          seen.unshift({ ...report, version: seen.length + 1, days });
        }
        expect(wrong).toEqual([]);
      }),
      { numRuns: 300, seed: 20261126 },
    );
    // Neither is everything kept back, nor nothing.
    for (const part of ['methods', 'costs', 'practices'] as const) {
      expect(held[part]).toBeGreaterThan(20);
      expect(shown[part]).toBeGreaterThan(20);
    }
  });

  it('of which one practice tells of few leave the others told', () => {
    const sites = Array.from({ length: 7 }, (_, at) => `site ${at}`);
    const rows = sites.flatMap((siteId): Made[] => [
      { ...{ siteId, units: 10 }, day: 2, method: 'lime' },
      { ...{ siteId, units: 10 }, day: 2, method: 'steam' },
    ]);
    const more: Made[] = [...rows, { siteId: 'site 8', day: 9, method: 'steam', units: 10 }];
    const first = { ...built(more, { first: 1, last: 5 }), version: 1 };
    const later = carryOver(built(more, { first: 1, last: 10 }), [first]);
    expect([told(later, 'lime').practices, told(later, 'steam').practices]).toEqual([true, false]);
    expect([told(later, 'lime').methods, told(later, 'steam').methods]).toEqual([true, false]);
    expect(later.content.keptBack).toEqual(['practices', 'costs', 'methods']);
  });
});
