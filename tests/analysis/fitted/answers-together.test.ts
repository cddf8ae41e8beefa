import { describe, expect, it } from 'vitest';
import { answersTogether } from '@/lib/analysis/fitted/answers-together';

const stored = (result: number, fittedAt: string) => ({ result, dataVersion: 'v', fittedAt });
const now = stored(1, '2026-07-02T00:00:00Z');
const before = stored(2, '2026-07-01T00:00:00Z');

describe('several fitted answers as one', () => {
  it('are current when all are, and as old as the oldest', () => {
    const answer = answersTogether<{ a: number; b: number }>({
      a: { kind: 'current', stored: now },
      b: { kind: 'current', stored: before },
    });
    expect(answer).toMatchObject({
      kind: 'current',
      stored: { result: { a: 1, b: 2 }, fittedAt: before.fittedAt },
    });
  });

  it('are shown from before while one is on its way, and then whole', async () => {
    const answer = answersTogether<{ a: number; b: number }>({
      a: { kind: 'current', stored: now },
      b: { kind: 'earlier', stored: before, next: Promise.resolve(stored(3, '2026-07-03T00:00:00Z')) },
    });
    if (answer.kind !== 'earlier') throw new Error(answer.kind);
    expect(answer.stored.result).toEqual({ a: 1, b: 2 });
    expect((await answer.next).result).toEqual({ a: 1, b: 3 });
  });

  it('are awaited while one has never been worked out', async () => {
    const answer = answersTogether<{ a: number; b: number }>({
      a: { kind: 'current', stored: now },
      b: { kind: 'first', next: Promise.resolve(before) },
    });
    if (answer.kind !== 'first') throw new Error(answer.kind);
    expect((await answer.next).result).toEqual({ a: 1, b: 2 });
  });
});
