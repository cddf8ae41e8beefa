// Phones, a bad network, and kill -9 of app and database: `npm run nemesis -- --seeds 50 --entries 2000`.
// With `--bug naive|ack-early|delete-refused` a fault is planted that has to be found.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { faultless } from './check-records';
import { nemesisPlace } from './nemesis-place';

const { values } = parseArgs({
  options: {
    seeds: { type: 'string', default: '50' },
    first: { type: 'string', default: '1' },
    entries: { type: 'string', default: '2000' },
    devices: { type: 'string', default: '8' },
    kills: { type: 'string', default: '3' },
    bug: { type: 'string', default: '' },
  },
});
const number = (text: string) => Number(text);

const place = await nemesisPlace(mkdtempSync(path.join(tmpdir(), 'nemesis-')), values.bug);
let faults = 0;
let acknowledged = 0;
let tries = 0;
let kills = 0;
try {
  const first = number(values.first);
  for (let seed = first; seed < first + number(values.seeds); seed += 1) {
    const began = performance.now();
    const { verdict, log } = await place.run(seededRandom(seed), {
      entries: number(values.entries),
      devices: number(values.devices),
      kills: number(values.kills),
    });
    if (!faultless(verdict)) {
      faults += 1;
      for (const kept of log.unsent) console.log(`unsent: ${JSON.stringify(kept)}`);
    }
    acknowledged += verdict.acknowledged;
    tries += log.tries;
    kills += log.kills;
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    console.log(
      `seed ${seed}: ${JSON.stringify(verdict)} ${log.tries} tries, ${log.kills} kills, ${seconds} s`,
    );
  }
} finally {
  await place.end();
}
console.log(
  `${acknowledged} acknowledged in ${tries} tries with ${kills} kills; seeds with faults: ${faults}`,
);
process.exit(values.bug === '' ? Math.min(1, faults) : faults > 0 ? 0 : 1);
