import { beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { getTrace } from '@/lib/records/trace/get-trace.query';
import { joined, type TraceLink } from '@/lib/records/trace/trace-link';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { type DrawnEnd, type DrawnLink, type DrawnNetwork, drawNetwork } from './drawn-network';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const counts = ({ from, to, voided }: DrawnLink) => !voided && !from.voided && !to.voided;
const nameOf = ({ from, to }: Pick<DrawnLink, 'from' | 'to'>) =>
  joined({ from, to, amount: null, voided: null, withdrawn: false });

/** The plain walk: grow the set of reached ends by every link that counts until it grows no more. */
function plainWalk({ links }: DrawnNetwork, start: DrawnEnd, toward: 'from' | 'to') {
  const away = toward === 'to' ? 'from' : 'to';
  const reached = new Set([start.id]);
  for (let before = -1; before < reached.size; ) {
    before = reached.size;
    for (const link of links) if (counts(link) && reached.has(link[away].id)) reached.add(link[toward].id);
  }
  const touching = links.filter((link) => reached.has(link[away].id));
  const standing = new Set(touching.filter(counts).map(nameOf));
  const takenOut = new Set(touching.map(nameOf).filter((name) => !standing.has(name)));
  return { standing: [...standing].sort(), takenOut: [...takenOut].sort() };
}

const names = (links: readonly TraceLink[]) => [...new Set(links.map(joined))].sort();

describe('a trace', () => {
  it.each([1, 2, 3])(
    'says what a plain walk over the records says, both ways (network %i)',
    async (seed) => {
      const drawn = await drawNetwork(people.coordinator, people, stock, seededRandom(seed));
      let told = 0;
      for (const start of seededRandom(seed).shuffle(drawn.ends).slice(0, 16)) {
        const trace = await readAs(people.coordinator, (context) => getTrace(context, start.kind, start.id));
        if (trace === undefined) throw new Error(`no trace of ${start.kind}`);
        for (const [side, toward] of [
          [trace.back, 'from'],
          [trace.on, 'to'],
        ] as const) {
          const plain = plainWalk(drawn, start, toward);
          expect(names(side.links)).toEqual(plain.standing);
          expect(names(side.takenOut)).toEqual(plain.takenOut);
          told += side.links.length;
          const ends = side.links.map((link) => link[toward]);
          const batches = new Set(ends.filter(({ kind }) => kind === 'batch').map(({ id }) => id));
          if (start.kind === 'batch' && toward === 'to') batches.add(start.id);
          expect(new Set(side.batches.map(({ id }) => id))).toEqual(batches);
          expect([...trace.names.keys()]).toEqual(expect.arrayContaining(ends.map(({ id }) => id)));
        }
      }
      expect(told).toBeGreaterThan(60);
    },
    60_000,
  );
});
