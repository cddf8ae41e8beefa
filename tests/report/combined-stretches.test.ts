import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import { bySite, dayOf, daysLeft, few, lastDay, type Stretch, signsOf, stretch } from './stretches-of-days';
import { type YearOfSites, yearReport } from './year-report';

type Picked = { readonly siteId: string; readonly day: number; readonly grams: number };
const story = fc.integer({ min: 5, max: 12 }).chain((sites) =>
  fc.record({
    rows: fc.array(
      fc.record({
        siteId: fc.integer({ min: 1, max: sites }).map((site) => `site ${site}`),
        day: fc.integer({ min: 1, max: lastDay }),
        grams: fc.integer({ min: 1, max: 40 }),
      }),
      { minLength: 30, maxLength: 120 },
    ),
    stretches: fc.array(stretch, { minLength: 3, maxLength: 6 }),
  }),
);

function built(rows: readonly Picked[], { first, last }: Stretch): BuiltReport {
  const sites: YearOfSites = bySite(rows.filter((row) => row.day >= first && row.day <= last));
  const { content, ground } = yearReport(2025, sites);
  return { content: { ...content, from: dayOf(first), to: dayOf(last) }, ground };
}

const shown = ({ content }: BuiltReport) => content.harvest.total.kind === 'shown';
const publish = (rows: readonly Picked[], stretches: readonly Stretch[]) => {
  const seen: (BuiltReport & { version: number; days: Stretch })[] = [];
  for (const days of stretches)
    seen.unshift({ ...carryOver(built(rows, days), seen), version: seen.length + 1, days });
  return seen;
};

describe('three and more stretches of days', { timeout: 120_000 }, () => {
  it('tell no total of few sites, however many of them are added and subtracted', () => {
    const found = { held: 0, told: 0 };
    fc.assert(
      fc.property(story, ({ rows, stretches }) => {
        const seen = publish(rows, stretches);
        const told = seen.filter(shown).map(({ days }) => days);
        found.told += told.length;
        found.held += seen.length - told.length;
        for (const signs of signsOf(told.length)) {
          const left = daysLeft(told, signs);
          if (left && left.size > 0 && few(rows.filter((row) => left.has(row.day))))
            expect([told, signs]).toEqual([]);
        }
      }),
      { numRuns: 300, seed: 20261126 },
    );
    expect(found.told).toBeGreaterThan(300);
    expect(found.held).toBeGreaterThan(100);
  });

  const sites = Array.from({ length: 7 }, (_, at) => `site ${at}`);
  const everyDay = (until: number) =>
    sites.flatMap((siteId) =>
      Array.from({ length: until }, (_, at): Picked => ({ siteId, day: at + 1, grams: 100 + at })),
    );
  const lone: Picked = { siteId: 'site 0', day: 10, grams: 900 };
  const parts = [1, 4, 7].map((first): Stretch => ({ first, last: first + 2 }));
  const whole: Stretch = { first: 1, last: 10 };

  it('of which the parts of a year are told: the year is not, where one site alone harvested in the rest of it', () => {
    const seen = publish([...everyDay(9), lone], [...parts, whole]);
    expect(seen.map(shown)).toEqual([false, true, true, true]);
    const year = built([...everyDay(9), lone], whole);
    expect(tellsBeside(year, seen.slice(1))).toBe(true);
  });

  it('of which the year is told: the last part that would leave one site is not', () => {
    const seen = publish([...everyDay(9), lone], [whole, ...parts]);
    expect(seen.map(shown)).toEqual([false, true, true, true]);
  });

  it('are all told where many sites harvested in each of them', () => {
    const seen = publish(everyDay(10), [whole, ...parts]);
    expect(seen.map(shown)).toEqual([true, true, true, true]);
  });
});
