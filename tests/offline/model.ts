// Random sequences of what can happen to a phone: `npm run outbox-model -- --runs 1000`. A failure is printed with the
// seed, path and replayPath that repeat it.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { Client } from 'pg';
import { moreMembers } from '../support/more-members';
import { growingPlace } from './growing-place';
import { runModel } from './run-model';

const { values } = parseArgs({
  options: { runs: { type: 'string', default: '1000' }, seed: { type: 'string', default: '1' } },
});
const place = await growingPlace(mkdtempSync(path.join(tmpdir(), 'model-')));
const admin = new Client({ connectionString: place.superuser() });
await admin.connect();
const owners = await moreMembers(place.superuser(), place.people.member, 60);
const colleague = place.people.coordinator;
const began = performance.now();
const failure = await runModel(
  { admin, owners, colleague, anotherBatch: place.anotherBatch },
  { numRuns: Number(values.runs), seed: Number(values.seed) },
);
await admin.end();
await place.end();
const seconds = ((performance.now() - began) / 1000).toFixed(0);
console.log(failure ?? `${values.runs} runs of up to 60 commands without a failure, ${seconds} s`);
process.exit(failure === undefined ? 0 : 1);
