import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountPart } from '@/lib/report/content/amount-part';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import type { ReportCell } from '@/lib/report/content/funder-report';
import { proteinPart } from '@/lib/report/content/protein-part';
import { harvestCells, type Picked, rule, speciesCells } from './random-network';
import { dayOf, daysLeft, few, lastDay, type Stretch, signsOf, stretch } from './stretches-of-days';
import { evenYear, yearReport } from './year-report';

const destinations = ['sold', 'donated', 'kept', 'composted'] as const;
const kinds = ['oyster', 'shiitake', 'lions_mane'] as const;

type Dated = Picked & { readonly day: number };

const picked = (sites: number) =>
  fc.record({
    siteId: fc.integer({ min: 1, max: sites }).map((site) => `site ${site}`),
    day: fc.integer({ min: 1, max: lastDay }),
    // One way and one kind are rare: cells of few sites in some stretches and of more in others.
    destination: fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom('sold', 'kept') },
      fc.constantFrom(...destinations),
    ),
    species: fc.oneof({ weight: 6, arbitrary: fc.constant('oyster') }, fc.constantFrom(...kinds)),
    grams: fc.integer({ min: 1, max: 40 }),
  });
const story = fc.integer({ min: 6, max: 12 }).chain((sites) =>
  fc.record({
    rows: fc.array(picked(sites), { minLength: 50, maxLength: 200 }),
    stretches: fc.array(stretch, { minLength: 2, maxLength: 4 }),
  }),
);

const inside =
  ({ first, last }: Stretch) =>
  (row: Dated) =>
    row.day >= first && row.day <= last;

function built(rows: readonly Dated[], days: Stretch): BuiltReport {
  const own = rows.filter(inside(days));
  const harvest = amountPart(harvestCells(own), ({ destination }) => destination, rule);
  const protein = proteinPart(speciesCells(own), harvest, rule);
  const { content } = yearReport(2025, evenYear, undefined, ['harvest', 'protein']);
  return {
    content: {
      ...{ ...content, from: dayOf(days.first), to: dayOf(days.last) },
      ...{ harvest: harvest.table, ...protein.content },
    },
    ground: { harvest: { harvest: harvest.known }, protein: protein.ground },
  };
}

type Published = BuiltReport & { readonly version: number; readonly days: Stretch };

function publish(rows: readonly Dated[], stretches: readonly Stretch[]): Published[] {
  const seen: Published[] = [];
  for (const days of stretches) {
    const report = carryOver(built(rows, days), seen);
    expect(tellsBeside(report, seen)).toBe(false);
    seen.unshift({ ...report, version: seen.length + 1, days });
  }
  return seen;
}

const isShown = ({ kind }: ReportCell) => kind === 'shown';

/** Whether the cells and the total of a table tell what some keys come to together: written down anew. */
function knows(total: ReportCell, cells: readonly ReportCell[], keys: ReadonlySet<string>): boolean {
  const hidden = cells.filter((cell) => !isShown(cell));
  const within = hidden.filter(({ key }) => keys.has(key));
  return within.length === 0 || (isShown(total) && within.length === hidden.length);
}

const subsetsOf = (keys: readonly string[]) =>
  Array.from(
    { length: 2 ** keys.length - 1 },
    (_, at) => new Set(keys.filter((_key, bit) => ((at + 1) >> bit) & 1)),
  );

/** Some keys and days of which readers can work out what few sites did. */
function leaks(
  seen: readonly Published[],
  rows: readonly Dated[],
  cellsOf: (report: BuiltReport) => readonly ReportCell[],
  keys: readonly string[],
  keyOf: (row: Dated) => string,
): unknown[] {
  return subsetsOf(keys).flatMap((some) => {
    const known = seen
      .filter((one) => knows(one.content.harvest.total, cellsOf(one), some))
      .map(({ days }) => days);
    return signsOf(known.length).flatMap((signs) => {
      const left = daysLeft(known, signs);
      if (!left || left.size === 0) return [];
      const behind = rows.filter((row) => left.has(row.day) && some.has(keyOf(row)));
      return few(behind) ? [[...some, known, signs]] : [];
    });
  });
}

describe('cells of reports over several stretches of days', { timeout: 120_000 }, () => {
  it('tell nothing of few sites, added up, taken off the total or off each other', () => {
    const found = { full: 0, part: 0, none: 0 };
    fc.assert(
      fc.property(story, ({ rows, stretches }) => {
        const seen = publish(rows, stretches);
        for (const { content, days } of seen.slice(0, -1)) {
          const before = built(rows, days).content.harvest;
          const hidden = content.harvest.cells.filter((cell) => !isShown(cell)).length;
          const plain = before.cells.filter((cell) => !isShown(cell)).length;
          if (isShown(before.total) && !isShown(content.harvest.total)) found.none += 1;
          else if (hidden > plain) found.part += 1;
          else found.full += 1;
        }
        const told = [
          ...leaks(
            seen,
            rows,
            ({ content }) => content.harvest.cells,
            destinations,
            (row) => row.destination,
          ),
          ...leaks(
            seen,
            rows,
            ({ content }) => content.protein.map(({ fresh }) => fresh),
            kinds,
            (row) => row.species,
          ),
        ];
        expect(told).toEqual([]);
      }),
      { numRuns: 300, seed: 20261126 },
    );
    // Neither is everything kept back, nor nothing.
    for (const times of Object.values(found)) expect(times).toBeGreaterThan(10);
  });
});
