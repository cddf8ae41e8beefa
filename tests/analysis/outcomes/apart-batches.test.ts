import fc from 'fast-check';
import { expect, it } from 'vitest';
import { apartOfSites, apartWithin } from '@/lib/analysis/outcomes/apart-batches';
import { apartClusters } from '@/lib/analysis/outcomes/apart-clusters';
import { apartIn } from '@/lib/analysis/outcomes/read-whole-sums';
import { addDays } from '@/lib/growing/calendar-date';

const batches = fc.array(
  fc.record({
    runs: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 3 }),
    flags: fc.integer({ min: 0, max: 15 }),
    inoculated: fc.integer({ min: 0, max: 40 }),
    judged: fc.integer({ min: 0, max: 60 }),
    yielded: fc.integer({ min: 0, max: 60 }),
  }),
  { maxLength: 30 },
);
const day = (of: number) => addDays('1970-01-01', of);

it('batches apart are those inoculated within the question, each with what has come by the day', () => {
  fc.assert(
    fc.property(batches, fc.nat(45), fc.nat(45), fc.nat(60), (all, from, to, today) => {
      const text = all.map(
        ({ runs, flags, inoculated, judged, yielded }) =>
          `{${runs.map((run) => `r${run}`).join()}}${flags},${inoculated},${judged},${yielded}`,
      );
      const numbers = new Map<string, number>();
      const read = apartOfSites(`site method species straw ${text.join(' ')}`, numbers).get('site') ?? [];
      const wanted = { from: day(from), to: day(to), container: 'bag' };
      const within = apartWithin(wanted)(all.length === 0 ? [] : read, today);
      const asked = all.filter(({ inoculated }) => inoculated >= from && inoculated <= to);
      const told = within.flatMap(({ runs, flags }) => runs.map((run, at) => `${run} ${flags[at]}`));
      expect(told.sort()).toEqual(
        asked
          .map(({ runs, flags, judged, yielded }) => {
            const come = (judged <= today ? 1 : 0) + (yielded <= today ? 6 : 0) + 8;
            return `${numbers.get(`r${runs[0]}`)} ${flags & come}`;
          })
          .sort(),
      );
      expect(within.flatMap(({ joining }) => joining.map(({ runIds }) => runIds.join())).sort()).toEqual(
        asked
          .filter(({ runs }) => runs.length > 1)
          .map(({ runs }) => runs.map((run) => `r${run}`).join())
          .sort(),
      );
    }),
    { numRuns: 500 },
  );
});

it('runs that were numbered anew are counted by their new numbers at every site', () => {
  const lines = (sites: readonly string[]) =>
    sites.map((site) => `${site} method species straw {${site}-1}1,5,6,7 {${site}-2}1,5,6,7`).join('\n');
  const readIn = (sites: readonly string[], written: readonly string[]) => {
    const numbers = new Map<string, number>();
    const apart = apartOfSites(lines(sites), numbers);
    const held = new Map([...apart].map(([site, own]) => [site, { young: [], apart: own }]));
    return {
      sums: { version: 1n, written, sites: new Map(), network: [] },
      beside: { version: 1n, day: day(20), from: day(0), sites: held, numbers },
    };
  };
  const wanted = { from: day(0), to: day(20), container: 'bag' };
  const today = new Map([
    ['hill', day(20)],
    ['mill', day(20)],
  ]);
  const before = apartIn(readIn(['mill', 'hill'], []), wanted, today);
  const after = apartIn(readIn(['hill', 'mill'], ['hill']), wanted, today, before);
  expect(apartClusters(after)('contamination', undefined)).toBe(4);
});
