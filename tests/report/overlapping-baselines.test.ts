import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import type { ReportCell } from '@/lib/report/content/funder-report';
import { rule } from './random-network';
import { evenYear, type YearOfSites, yearReport } from './year-report';

const lastDay = 12;

type Picked = { readonly siteId: string; readonly day: number; readonly grams: number };
type Stretch = { readonly first: number; readonly last: number };
type Wanted = { readonly stretch: Stretch; readonly as: 'baseline' | 'period' };

const stretch = fc
  .tuple(fc.integer({ min: 1, max: lastDay }), fc.integer({ min: 1, max: lastDay }))
  .map(([one, other]): Stretch => ({ first: Math.min(one, other), last: Math.max(one, other) }));

const picked = (sites: number) =>
  fc.record({
    siteId: fc.integer({ min: 1, max: sites }).map((site) => `site ${site}`),
    day: fc.integer({ min: 1, max: lastDay }),
    grams: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 1, max: 40 }) },
      fc.integer({ min: 1, max: 4000 }),
    ),
  });

/** Harvests of some days, and reports that take stretches of them as their baseline or as their own period. */
const story = fc.integer({ min: 1, max: 14 }).chain((sites) =>
  fc.record({
    rows: fc.array(picked(sites), { minLength: 20, maxLength: 120 }),
    wanted: fc.array(fc.record({ stretch, as: fc.constantFrom('baseline' as const, 'baseline', 'period') }), {
      minLength: 2,
      maxLength: 4,
    }),
  }),
);

const inside = (rows: readonly Picked[], { first, last }: Stretch) =>
  rows.filter(({ day }) => day >= first && day <= last);

function bySite(rows: readonly Picked[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { siteId, grams } of rows) sums[siteId] = (sums[siteId] ?? 0) + grams;
  return sums;
}

const dayOf = (day: number) => `2025-05-${String(day).padStart(2, '0')}`;
const daysOf = ({ first, last }: Stretch) => ({ from: dayOf(first), to: dayOf(last) });

/** A report as it is built, beside or over a stretch; otherwise its period is a year of its own. */
function built(sites: YearOfSites, days: Stretch, as: Wanted['as'], index: number): BuiltReport {
  if (as === 'period') {
    const { content, ground } = yearReport(2025, sites);
    return { content: { ...content, ...daysOf(days) }, ground };
  }
  const { content, ground } = yearReport(2030 + index, evenYear, { year: 2025, sites });
  return { content: { ...content, baseline: daysOf(days) }, ground };
}

const toldCells = ({ content }: BuiltReport, as: Wanted['as']): readonly ReportCell[] =>
  as === 'baseline'
    ? content.changes.map(({ before }) => before)
    : [content.harvest.total, content.residues.total, ...content.sales.map(({ outlets }) => outlets.total)];

/** What few sites did on the days that only one of two stretches has, written down anew. */
function tellsOfFew(rows: readonly Picked[], one: Stretch, other: Stretch): boolean {
  const [first, second] = [bySite(inside(rows, one)), bySite(inside(rows, other))];
  const apart = [...new Set([...Object.keys(first), ...Object.keys(second)])]
    .map((site) => Math.abs((first[site] ?? 0) - (second[site] ?? 0)))
    .filter((grams) => grams > 0)
    .sort((a, b) => b - a);
  const all = apart.reduce((sum, grams) => sum + grams, 0);
  const topTwo = (apart[0] ?? 0) + (apart[1] ?? 0);
  return apart.length > 0 && (apart.length < rule.minSites || 100 * topTwo >= rule.topTwoPercent * all);
}

const share = (one: Stretch, other: Stretch) => one.first <= other.last && other.first <= one.last;

describe('baselines and periods that share days without being equal', { timeout: 90_000 }, () => {
  it('tell nothing of few sites when one is taken off the other, or off a report over such days', () => {
    let held = 0;
    fc.assert(
      fc.property(story, ({ rows, wanted }) => {
        const wrong: unknown[] = [];
        const seen: (BuiltReport & { version: number; wanted: Wanted })[] = [];
        for (const [index, want] of wanted.entries()) {
          const sites = bySite(inside(rows, want.stretch));
          const report = carryOver(built(sites, want.stretch, want.as, index), seen);
          const told = toldCells(report, want.as).map(({ kind }) => kind);
          held += told.filter((kind) => kind === 'protected').length;
          for (const earlier of seen) {
            if (!share(want.stretch, earlier.wanted.stretch)) continue;
            if (!tellsOfFew(rows, want.stretch, earlier.wanted.stretch)) continue;
            const before = toldCells(earlier, earlier.wanted.as).map(({ kind }) => kind);
            if (told.some((kind, at) => kind === 'shown' && before[at] === 'shown'))
              wrong.push([want, earlier.wanted]);
          }
          seen.unshift({ ...report, version: seen.length + 1, wanted: want });
        }
        expect(wrong).toEqual([]);
      }),
      { numRuns: 400, seed: 20261126 },
    );
    expect(held).toBeGreaterThan(300);
  });

  it('are told where many sites stand behind the days that only one of them has', () => {
    const many = Object.fromEntries(Object.entries(evenYear).map(([site, grams]) => [site, grams + 500]));
    const first = { ...built(evenYear, { first: 1, last: 9 }, 'baseline', 0), version: 1 };
    const later = carryOver(built(many, { first: 1, last: 12 }, 'baseline', 1), [first]);
    expect(later.content.changes.map(({ before }) => before.kind)).toEqual(['shown', 'shown', 'shown']);
    expect(later.content.carried).toEqual({});
  });

  it('are kept back where one site harvested on those days, and a draft with them is not published', () => {
    const one = { ...evenYear, a: 3400 };
    const first = { ...built(evenYear, { first: 1, last: 9 }, 'baseline', 0), version: 1 };
    const draft = built(one, { first: 1, last: 12 }, 'baseline', 1);
    expect(tellsBeside(draft, [first])).toBe(true);
    const held = carryOver(draft, [first]);
    expect(held.content.changes.map(({ before, change }) => [before.kind, change.kind])).toEqual(
      Array.from({ length: 3 }, () => ['protected', 'protected']),
    );
    expect(tellsBeside(held, [first])).toBe(false);
  });
});
