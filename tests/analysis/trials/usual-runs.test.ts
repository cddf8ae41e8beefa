import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { readUsualRuns } from '@/lib/analysis/trials/read-usual-runs';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, untreatedStraw } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const atMillLane = ['2026-03-31', '2026-04-01', '2026-04-02'];
const atQuarry = ['2026-04-01', '2026-04-02'];
let people: Growers;

beforeAll(async () => {
  people = await growers(superuser);
  const stock = await shed(people);
  for (const inoculatedOn of atMillLane) await startBags(people, stock, { inoculatedOn });
  const elsewhere = { siteId: people.quarry, components: [untreatedStraw(stock)] };
  for (const inoculatedOn of atQuarry)
    await startBags({ ...people, member: people.neighbour }, stock, { ...elsewhere, inoculatedOn });
}, 120_000);

/** Of how many batches the share lost tells, counted or left out with a reason, and of which sites. */
async function read(batches: number, fewestSites: number, at = now) {
  const usual = await readAs(people.coordinator, (context) =>
    readUsualRuns(context, at, { batches, fewestSites }),
  );
  if (usual === undefined) throw new Error('there are batches');
  const { loss, weighed, drawn } = usual;
  const told = (of: Pick<typeof loss, 'n' | 'leftOut'>) =>
    of.leftOut.reduce((sum, left) => sum + left.batches, of.n.batches);
  return { drawn, loss: told(loss), weighed: told(weighed) };
}

/** How many batches the first of both sites by the MD5 of their ids has. */
function firstDrawn() {
  const order = (id: string) => createHash('md5').update(id).digest('hex');
  return order(people.millLane) < order(people.quarry) ? atMillLane.length : atQuarry.length;
}

describe('how runs usually go, for the size of a trial', () => {
  it('rests on every batch of two years, and tells of each whether it counts', async () => {
    expect(await read(5, 1)).toEqual({ drawn: undefined, loss: 5, weighed: 5 });
  });

  it('rests on whole sites drawn by lot where there are more batches than can be read, and says out of how many', async () => {
    const one = firstDrawn();
    expect(await read(4, 1)).toEqual({ drawn: { sites: 1, of: 2 }, loss: one, weighed: one });
  });

  it('rests on the same sites whenever it is asked', async () => {
    const later = new Date('2026-07-27T15:00:00Z');
    expect((await read(4, 1, later)).loss).toBe(firstDrawn());
  });

  it('rests on as many sites as speak for a network, though they have more batches', async () => {
    expect(await read(1, 2)).toEqual({ drawn: undefined, loss: 5, weighed: 5 });
  });
});
