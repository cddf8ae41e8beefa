import fc from 'fast-check';
import { expect, it } from 'vitest';
import { clusterOfRun } from '@/lib/analysis/comparison/cluster-of-run';
import { apartOfSites, noApartNames, perBatch } from '@/lib/analysis/outcomes/apart-batches';
import { apartClusters } from '@/lib/analysis/outcomes/apart-clusters';
import { apartWithin, flagsAt } from '@/lib/analysis/outcomes/apart-of-question';
import type { Measure } from '@/lib/analysis/outcomes/outcome-sums';
import { addDays } from '@/lib/growing/calendar-date';

const batch = fc.record({
  site: fc.constantFrom('hill', 'mill'),
  method: fc.constantFrom('steam', 'lime'),
  runs: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 3 }),
  flags: fc.integer({ min: 0, max: 15 }),
  // Somebody may bring in logs of before 1970.
  inoculated: fc.integer({ min: -10, max: 40 }),
  judged: fc.integer({ min: 0, max: 60 }),
  yielded: fc.integer({ min: 0, max: 60 }),
});
type Batch = typeof batch extends fc.Arbitrary<infer One> ? One : never;
const question = fc.record({
  all: fc.array(batch, { maxLength: 30 }),
  from: fc.nat(45),
  to: fc.nat(45),
  day: fc.nat(60),
});
const date = (of: number) => addDays('1970-01-01', of);

type Row = Omit<Batch, 'runs' | 'site'> & {
  readonly site: string;
  readonly runs: readonly string[];
  readonly species: string;
  readonly material: string;
};

/** The text of the database, as columns of every batch of a method, species and material. */
function textOf(all: readonly Row[]): string {
  const kinds = new Map<string, Row[]>();
  for (const one of all) {
    const kind = `${one.method} ${one.species} ${one.material}`;
    kinds.set(kind, [...(kinds.get(kind) ?? []), one]);
  }
  const column = (values: readonly number[]) => `{${values.join()}}`;
  return JSON.stringify(
    [...kinds].map(([kind, own]) => [
      ...kind.split(' '),
      own.map(({ site }) => site).join(),
      own.map(({ runs }) => runs.join()).join(';'),
      column(own.map(({ inoculated, flags }) => 16 * inoculated + flags)),
      column(own.map(({ judged }) => judged)),
      column(own.map(({ yielded }) => yielded)),
    ]),
  );
}

const rowOf = (one: Batch): Row => ({
  ...one,
  ...{ runs: one.runs.map((run) => `r${run}`), species: 'oyster', material: 'straw' },
});

function ask({ all, from, to, day }: { all: readonly Batch[]; from: number; to: number; day: number }) {
  const names = noApartNames();
  const sites = apartOfSites(textOf(all.map(rowOf)), names);
  const wanted = { from: date(from), to: date(to), container: 'bag' };
  const today = new Map(['hill', 'mill'].map((site) => [site, date(day)]));
  return { names, within: apartWithin({ sites, names, wanted, today }) };
}

const comeBy = ({ flags, judged, yielded }: Batch, day: number) =>
  flags & ((judged <= day ? 1 : 0) + (yielded <= day ? 6 : 0) + 8);

it('batches apart are those inoculated within the question, each with what has come by the day', () => {
  fc.assert(
    fc.property(question, (asked) => {
      const { names, within } = ask(asked);
      const told = within.stretches.flatMap(({ numbers, start, end, today }) => {
        const places = Array.from({ length: (end - start) / perBatch }, (_, at) => start + perBatch * at);
        const methodAt = (at: number) => within.methods[within.methodOf[numbers[at + 5] ?? -1] ?? -1];
        return places.map((at) => `${methodAt(at)} ${numbers[at]} ${flagsAt(numbers, at, today)}`);
      });
      const expected = asked.all.filter(
        ({ inoculated }) => inoculated >= asked.from && inoculated <= asked.to,
      );
      expect(told.sort()).toEqual(
        expected
          .map((one) => `${one.method} ${names.runs.get(`r${one.runs[0]}`)} ${comeBy(one, asked.day)}`)
          .sort(),
      );
      expect(within.joining.map(({ runIds }) => runIds.join()).sort()).toEqual(
        expected
          .filter(({ runs }) => runs.length > 1)
          .map(({ runs }) => runs.map((run) => `r${run}`).join())
          .sort(),
      );
    }),
    { numRuns: 500 },
  );
});

it('clusters are counted as the batches themselves join their runs, of a method and of all', () => {
  const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];
  fc.assert(
    fc.property(question, (asked) => {
      const clusters = apartClusters(ask(asked).within);
      const batches = asked.all
        .filter(({ inoculated }) => inoculated >= asked.from && inoculated <= asked.to)
        .map((one, at) => ({ ...one, id: String(at), runIds: one.runs.map(String) }));
      const clusterOf = clusterOfRun(batches);
      for (const [bit, measure] of measures.entries())
        for (const method of [undefined, 'steam', 'lime']) {
          const counted = batches.filter(
            (one) => (method === undefined || one.method === method) && (comeBy(one, asked.day) >> bit) & 1,
          );
          expect(clusters(measure, method)).toBe(new Set(counted.map(({ id }) => clusterOf.get(id))).size);
        }
    }),
    { numRuns: 500 },
  );
});

const anyOne: Row = {
  ...{ site: 'mill', method: 'steam', species: 'oyster', material: 'straw', runs: ['r1'] },
  ...{ flags: 1, inoculated: 5, judged: 6, yielded: 7 },
};

it('a site that began after the choices were read has no day yet, and nothing of it is counted', () => {
  const names = noApartNames();
  const sites = apartOfSites(textOf([{ ...anyOne, site: 'new' }]), names);
  const wanted = { from: date(0), to: date(20), container: 'bag' };
  const within = apartWithin({ sites, names, wanted, today: new Map([['mill', date(20)]]) });
  expect(apartClusters(within)('contamination', undefined)).toBe(0);
});

it('of one species or material only the clusters of its own batches are counted, and only those join', () => {
  const names = noApartNames();
  const joins = { ...anyOne, species: 'shiitake', runs: ['r1', 'r2'] };
  const sites = apartOfSites(textOf([anyOne, joins, { ...anyOne, material: 'bran', runs: ['r2'] }]), names);
  const today = new Map([['mill', date(20)]]);
  const count = (choice: object) => {
    const wanted = { from: date(0), to: date(20), container: 'bag', ...choice };
    return apartClusters(apartWithin({ sites, names, wanted, today }))('contamination', undefined);
  };
  expect(count({})).toBe(1);
  expect(count({ species: 'oyster' })).toBe(2);
  expect(count({ species: 'oyster', material: 'bran' })).toBe(1);
});
