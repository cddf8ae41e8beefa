import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { operations } from '@/lib/api/operation/operations';
import { makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { send, tokenOf } from './api-world';
import { type Case, casesOf } from './cases';
import { checkAnswer } from './document-client';

const { superuser } = await testDatabase();
let world: World;
let cases: ReadonlyMap<string, Case>;

beforeAll(async () => {
  world = await makeWorld(superuser);
  cases = await casesOf(world);
});

const wild = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(null, '', -1, 0, 1e308, 2 ** 53, '2026-02-30', '2026-04-27T25:00:00Z', '９', '\u202e', []),
  fc.string({ unit: 'binary', maxLength: 60 }),
);

type Json = Record<string, unknown>;

/** A good body with some of its parts replaced, dropped or added; or anything at all. */
function mutated(body: Json): fc.Arbitrary<unknown> {
  const names = Object.keys(body);
  const changed = fc
    .tuple(
      fc.subarray(names, { minLength: 1 }),
      fc.array(wild, { minLength: names.length, maxLength: names.length }),
    )
    .map(([chosen, values]) => ({
      ...body,
      ...Object.fromEntries(chosen.map((name, index) => [name, values[index]])),
    }));
  const dropped = fc
    .subarray(names)
    .map((kept) => Object.fromEntries(kept.map((name) => [name, body[name]])));
  const added = fc.tuple(fc.string(), wild).map(([name, value]) => ({ ...body, [name]: value }));
  return fc.oneof({ weight: 4, arbitrary: changed }, dropped, added, wild);
}

const writes = operations.filter(({ method }) => method !== 'GET').map(({ name }) => name);

it.each(writes)('%s answers any body as the document says, never with a fault of ours', async (name) => {
  const operation = operations.find((one) => one.name === name);
  const { id, body, revision } = (await cases.get(name)?.()) ?? {};
  if (!operation) throw new Error(name);
  // Each operation has a token of its own, so that no limit is met.
  const token = await tokenOf(world.people.coordinator);
  await fc.assert(
    fc.asyncProperty(mutated(body ?? {}), async (sent) => {
      const answer = await send(operation.method, operation.path.replace('{id}', id ?? ''), {
        token,
        body: sent,
        headers: revision === undefined ? {} : { 'if-match': `"${revision}"` },
      });
      const { status } = await checkAnswer(name, answer);
      expect(status).toBeLessThan(500);
    }),
    { numRuns: 40, seed: 20_261_126 },
  );
});
