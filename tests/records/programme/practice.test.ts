import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctPractice } from '@/lib/records/practice/correct-practice.command';
import { getPractice } from '@/lib/records/practice/get-practice.query';
import { correctPracticeInput } from '@/lib/records/practice/practice.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { adopt, idOf } from './programme-records';

const { superuser } = await testDatabase();
const { member, neighbour, millLane } = await growers(superuser);

describe('a practice taken up', () => {
  it('goes on until it is said to have ended', async () => {
    const id = idOf(await adopt(member, millLane, { growers: '4' }));
    const raw = {
      id,
      revision: 1,
      reason: 'gave up',
      practice: 'hygiene',
      since: '2026-05-01',
      until: '2026-05-15',
    };
    const ended = await runAs(member, correctPracticeInput, correctPractice, raw, { now: testDay });
    expect(ended.kind).toBe('ok');
    expect(await readAs(member, (context) => getPractice(context, id))).toMatchObject({
      since: '2026-05-01',
      until: '2026-05-15',
    });
  });

  it('of another kind needs a description, and ends no earlier than it began', async () => {
    expect(await adopt(member, millLane, { practice: 'other' })).toMatchObject({
      errors: [{ field: 'description', code: 'missing' }],
    });
    expect(await adopt(member, millLane, { until: '2026-04-01' })).toMatchObject({
      errors: [{ field: 'until', code: 'before' }],
    });
    expect(await adopt(member, millLane, { since: '2026-06-01' })).toMatchObject({
      errors: [{ field: 'since', code: 'future-date' }],
    });
  });

  it("is not recorded for a neighbour's site", async () => {
    expect((await adopt(neighbour, millLane)).kind).toBe('not-found');
  });
});
