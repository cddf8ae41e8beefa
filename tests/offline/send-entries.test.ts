import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { keepSentMilliseconds } from '@/lib/offline/send-entries';
import { answer, entry, hour, phone, refused, saved } from './lucky-phone';

describe('an entry that the server does not take', () => {
  it.each([
    ['400', answer(400, refused('Load the page again')), 'needs-you'],
    ['401', answer(401, refused('Sign in')), 'waiting'],
    ['403', answer(403, refused('Another account')), 'needs-you'],
    ['404', answer(404, refused('Not there')), 'needs-you'],
    [
      '409 with a question',
      answer(409, { kind: 'asked', questions: [{ code: 'be-high', text: 'Sure?' }] }),
      'needs-you',
    ],
    ['409 in work', answer(409, { title: 'Being saved' }, '1'), 'waiting'],
    [
      '412',
      answer(412, {
        kind: 'conflict',
        revision: 2,
        changedBy: 'Wren',
        changedAt: '2026-05-10T18:00:00Z',
        fields: [],
      }),
      'needs-you',
    ],
    ['413', answer(413, refused('Too large')), 'needs-you'],
    ['422', answer(422, refused('Enter fresh mass')), 'needs-you'],
    ['429', answer(429, refused('Wait'), '30'), 'waiting'],
    ['500', answer(500), 'waiting'],
    ['a page in place of an answer', answer(200, null), 'waiting'],
    ['no connection', { kind: 'lost' } as const, 'waiting'],
    ['silence', 'hang' as const, 'waiting'],
  ])('after %s is kept, with what was said, and the others are sent', async (_name, reply, state) => {
    const first = entry();
    const others = [entry(), entry(), entry(), entry(), entry(), entry()];
    const { keep, round, kept, posted, pass, runOut, outbox } = phone([first, ...others], (one) =>
      one.id === first.id ? reply : saved(one),
    );
    await keep();
    const end = round();
    await new Promise((resolve) => setTimeout(resolve, 20));
    runOut();
    await end;
    if (reply !== 'hang' && reply.kind === 'answered' && reply.status === 401) {
      // Nothing more is asked without a sign-in; after it everything goes on.
      expect((await end).signIn).toBe(true);
      expect(posted.length).toBeLessThan(7);
      await round(true);
    }
    expect(outbox.all()).toHaveLength(7);
    expect(kept(first)).toMatchObject({ state, entry: first });
    const said = reply !== 'hang' && reply.kind === 'answered' && reply.status >= 400;
    expect(kept(first)?.trouble?.status).toBe(said ? reply.status : null);
    expect(others.every((one) => kept(one)?.state === 'sent')).toBe(true);
    if (state === 'waiting') {
      pass(hour);
      const before = posted.length;
      const again = round();
      await new Promise((resolve) => setTimeout(resolve, 5));
      runOut();
      await again;
      expect(posted.length).toBe(before + 1);
    }
  });
});

describe('the time of the next try', () => {
  it('doubles from two seconds to five minutes, half of it left to chance', async () => {
    const one = entry();
    const { keep, round, pass } = phone([one], () => answer(500));
    await keep();
    const waits: number[] = [];
    for (let tries = 0; tries < 10; tries += 1) {
      const { nextAt } = await round(true);
      waits.push(Math.round(((nextAt ?? 0) - 1_000_000) / 750) / 2);
      pass(0);
    }
    expect(waits.slice(0, 4)).toEqual([1, 2, 4, 8]);
    expect(waits.at(-1)).toBe(150);
  });

  it('is not before what the server asks for, even when the person looks', async () => {
    const one = entry();
    const { keep, round, posted, pass } = phone([one], () => answer(429, null, '90'));
    await keep();
    expect((await round()).nextAt).toBe(1_000_000 + 90_000);
    pass(80_000);
    await round(true);
    expect(posted).toHaveLength(1);
    pass(10_000);
    await round();
    expect(posted).toHaveLength(2);
  });

  it('is none while a sign-in is missing', async () => {
    const { keep, round } = phone([entry()], () => answer(401));
    await keep();
    expect(await round()).toEqual({ sent: 0, unsent: 1, signIn: true, nextAt: null });
  });
});

describe('an entry that stands on another', () => {
  it('waits for it and goes in the same round, after it', async () => {
    const parent = entry();
    const undo = entry({ kind: 'undo', input: { entryId: parent.id } });
    const { keep, round, posted } = phone([undo, parent], saved);
    await keep();
    expect(await round()).toMatchObject({ sent: 2, unsent: 0 });
    expect(posted).toEqual([parent.id, undo.id]);
  });

  it('waits as long as that needs a person, and nothing else does', async () => {
    const parent = entry();
    const photo = entry({ kind: 'photo', input: { parentId: parent.id } });
    const other = entry();
    const { keep, round, kept } = phone([parent, photo, other], (one) =>
      one.id === parent.id ? answer(422, refused('Enter fresh mass')) : saved(one),
    );
    await keep();
    expect(await round()).toMatchObject({ sent: 1, unsent: 2, nextAt: null });
    expect(kept(photo)).toMatchObject({ state: 'waiting', tries: 0 });
  });
});

describe('the outbox', () => {
  it('never sends what another person wrote', async () => {
    const theirs = entry({ personId: randomUUID() });
    const { keep, round, posted, outbox } = phone([theirs, entry()], saved);
    await keep();
    await round();
    expect(posted).toHaveLength(1);
    expect(outbox.all()).toHaveLength(2);
  });

  it('tries an entry of another account again, since the right one may sign in', async () => {
    const one = entry();
    let account = 'wrong';
    const { keep, round, pass, kept } = phone([one], () => (account === 'wrong' ? answer(403) : saved(one)));
    await keep();
    await round();
    expect(kept(one)?.state).toBe('needs-you');
    account = 'right';
    pass(hour);
    await round();
    expect(kept(one)?.state).toBe('sent');
  });

  it('takes an entry found in the middle of being sent for one that waits', async () => {
    const one = entry();
    const { keep, round, outbox, kept } = phone([one], saved);
    await keep();
    await outbox.open().change(one.id, one.key, { state: 'sending', tries: 1 });
    await round();
    expect(kept(one)?.state).toBe('sent');
  });

  it('does not mark a new wording as sent by the answer to an earlier one', async () => {
    const one = entry();
    const changed = { ...one, key: randomUUID(), input: { note: 'again' } };
    const { keep, round, outbox, kept } = phone([one], (asked) => {
      // The page was killed while it sent, and the entry was changed on the next one.
      if (asked.key === one.key) {
        void outbox.open().change(one.id, one.key, { state: 'waiting' });
        void outbox.open().replace(one.id, one.key, changed);
      }
      return saved(asked);
    });
    await keep();
    await round();
    expect(kept(one)).toMatchObject({ state: 'waiting', entry: changed });
  });

  it('lists a sent entry for a day and then forgets it', async () => {
    const one = entry();
    const { keep, round, pass, outbox } = phone([one], saved);
    await keep();
    await round();
    pass(keepSentMilliseconds - 1);
    await round();
    expect(outbox.all()).toHaveLength(1);
    pass(1);
    await round();
    expect(outbox.all()).toHaveLength(0);
  });
});
