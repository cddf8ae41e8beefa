import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { disconnect } from '@/lib/database/client';
import { answerSignal } from '@/lib/records/signal/answer-signal.command';
import { answerSignalInput } from '@/lib/records/signal/answer-signal.input';
import { listSignalAnswers } from '@/lib/records/signal/list-signal-answers.query';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';

const { superuser } = await testDatabase();
let people: Growers;
beforeAll(async () => {
  people = await growers(superuser);
});
afterAll(disconnect);

const signalKey = 'run:0198f2c4-0000-7000-8000-000000000001:cut_short';
const answer = (raw: Record<string, unknown>, actor: Actor = people.coordinator) =>
  runAs(actor, answerSignalInput, answerSignal, { signalKey, ...raw });
const listed = async (actor: Actor = people.coordinator) =>
  (await readAs(actor, (context) => listSignalAnswers(context, [signalKey]))).get(signalKey);

describe('an answer to a signal', () => {
  it('is seen, or explained with words, by whom and when', async () => {
    expect(await answer({ answer: 'seen' })).toMatchObject({ kind: 'ok' });
    expect(await listed()).toMatchObject({ answer: 'seen', words: null, by: people.coordinator.name });
    await answer({ answer: 'explained', words: 'The burner ran out of gas' });
    expect(await listed()).toMatchObject({ answer: 'explained', words: 'The burner ran out of gas' });
  });

  it('keeps what was answered before in the history', async () => {
    const history = await readAs(people.coordinator, ({ db }) =>
      db.history.findMany({ where: { tableName: 'signal_answer' }, orderBy: { id: 'asc' } }),
    );
    expect(history.map(({ action }) => action)).toEqual(['created', 'changed']);
    expect(history[1]?.oldValues).toMatchObject({ answer: 'seen' });
  });

  it('can be taken back, after which the signal is open again', async () => {
    await answer({ answer: 'open' });
    expect(await listed()).toBeUndefined();
  });

  it('needs words to explain anything, and a key that a signal could have', async () => {
    expect(await answer({ answer: 'explained', words: ' ' })).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'words', code: 'missing' }],
    });
    expect(await answer({ answer: 'seen', signalKey: 'DROP TABLE' })).toMatchObject({ kind: 'invalid' });
  });

  it('is a coordinator’s, of the own network', async () => {
    await answer({ answer: 'seen' });
    expect(await answer({ answer: 'seen' }, people.member)).toMatchObject({ kind: 'not-found' });
    expect(await listed(people.member)).toBeUndefined();
    expect(await listed(people.stranger)).toBeUndefined();
  });
});
