import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBags } from '../support/bags';
import { testDatabase } from '../support/database';
import { testSettings } from '../support/entries';
import { type Growers, growers } from '../support/growers';
import { moreMembers } from '../support/more-members';
import { type Shed, shed } from '../support/shed';
import { runModel } from './run-model';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  testSettings();
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
});
afterAll(() => admin.end());

describe('an outbox and its server', () => {
  it('hold what the person meant, whatever happens to phone, signal, sign-in and other hands', {
    timeout: 180_000,
  }, async () => {
    const owners = await moreMembers(superuser, people.member, 4);
    const failure = await runModel(
      { admin, owners, colleague: people.coordinator, anotherBatch: () => startBags(people, stock) },
      { numRuns: 30, seed: 20261125 },
    );
    expect(failure).toBeUndefined();
  });
});
