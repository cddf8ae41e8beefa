import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryOver } from '@/lib/report/content/carry-over';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import { built, network, type Picked, rule } from './random-network';

type Sums = ReadonlyMap<string, number>;
/** What a reader of the report was told, and what it was made of: known to this test, not to the reader. */
type Told = { readonly keys: string; readonly sums: Sums };

function sumOf(rows: readonly Picked[], holds: (row: Picked) => boolean): Sums {
  const sums = new Map<string, number>();
  for (const row of rows.filter(holds)) sums.set(row.siteId, (sums.get(row.siteId) ?? 0) + row.grams);
  return sums;
}

/** Every subset of the shown cells, and the total less it: all that one table lets be worked out. */
function unions(
  cells: readonly { readonly key: string; readonly kind: string }[],
  totalShown: boolean,
  rows: readonly Picked[],
  column: 'destination' | 'species',
): Told[] {
  const shown = cells.filter(({ kind }) => kind === 'shown').map(({ key }) => key);
  return Array.from({ length: 2 ** shown.length }, (_, mask) => {
    const chosen = shown.filter((_key, at) => (mask >> at) & 1);
    const some = { keys: chosen.join(), sums: sumOf(rows, (row) => chosen.includes(row[column])) };
    const rest = {
      keys: `all but ${chosen.join()}`,
      sums: sumOf(rows, (row) => !chosen.includes(row[column])),
    };
    return totalShown ? [some, rest] : [some];
  }).flat();
}

function toldBy(content: FunderReportContent, rows: readonly Picked[]) {
  const totalShown = content.harvest.total.kind === 'shown';
  return {
    destinations: unions(content.harvest.cells, totalShown, rows, 'destination'),
    species: unions(
      content.protein.map(({ fresh }) => fresh),
      totalShown,
      rows,
      'species',
    ),
  };
}

/** The rule for cells, written down anew: at least five sites, the two largest below 85 %, or nothing at all. */
function tells(sums: Sums): boolean {
  const amounts = [...sums.values()].filter((amount) => amount > 0).sort((a, b) => b - a);
  const total = amounts.reduce((sum, amount) => sum + amount, 0);
  const topTwo = (amounts[0] ?? 0) + (amounts[1] ?? 0);
  return total > 0 && (amounts.length < rule.minSites || 100 * topTwo >= rule.topTwoPercent * total);
}

/** Sites whose amounts differ: none, or at least five, whatever is subtracted from what. */
function fewDiffer(first: Sums, second: Sums): boolean {
  const sites = new Set([...first.keys(), ...second.keys()]);
  const differing = [...sites].filter((site) => (first.get(site) ?? 0) !== (second.get(site) ?? 0));
  return differing.length > 0 && differing.length < rule.minSites;
}

const differences = (first: readonly Told[], second: readonly Told[]) =>
  first.flatMap((one) =>
    second
      // A sum less nothing is the sum itself, which the rule for cells has judged.
      .filter((other) => one.sums.size > 0 && other.sums.size > 0)
      .filter((other) => fewDiffer(one.sums, other.sums))
      .map((other) => `${one.keys} less ${other.keys}`),
  );

const runs = { numRuns: 1000, seed: 20261126 };

describe('a report for funders, over 1,000 random networks', () => {
  it('shows no sum that breaks the rule, nor one that follows from the others', () => {
    fc.assert(
      fc.property(network, ({ first }) => {
        const { destinations, species } = toldBy(built(first).content, first);
        expect(
          [...destinations, ...species].filter(({ sums }) => tells(sums)).map(({ keys }) => keys),
        ).toEqual([]);
      }),
      runs,
    );
  });

  it('shows no two tables of one total whose difference is that of a few sites', () => {
    fc.assert(
      fc.property(network, ({ first }) => {
        const { destinations, species } = toldBy(built(first).content, first);
        expect(differences(destinations, species)).toEqual([]);
      }),
      runs,
    );
  });

  it('tells nothing of a few sites by what a later version shows less an earlier one', () => {
    fc.assert(
      fc.property(network, ({ first, added }) => {
        const seen = [{ ...built(first), version: 1, rows: first }];
        let rows = first;
        for (const more of added) {
          rows = [...rows, ...more];
          const later = carryOver(built(rows), seen);
          // A part that stands as before is made of the records of that version.
          const from = later.content.carried.harvest;
          const made =
            from === undefined ? rows : (seen.find(({ version }) => version === from)?.rows ?? rows);
          for (const earlier of seen) {
            const [now, before] = [toldBy(later.content, made), toldBy(earlier.content, earlier.rows)];
            for (const table of ['destinations', 'species'] as const)
              for (const other of ['destinations', 'species'] as const)
                expect(differences(now[table], before[other])).toEqual([]);
          }
          seen.unshift({ ...later, version: seen.length + 1, rows: made });
        }
      }),
      { ...runs, numRuns: 400 },
    );
  });
});
