import { beforeAll, describe, expect, it } from 'vitest';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { notFound, ok } from '@/lib/base/result';
import { isUnavailable } from '@/lib/database/is-unavailable';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';

const { superuser } = await testDatabase();
let people: Growers;

beforeAll(async () => {
  people = await growers(superuser);
});

const gap = (): never => {
  throw new TypeError('a row that must be there is missing');
};

describe('what broke in a transaction', () => {
  it('is told as time that ran out, when the transaction was over by then', async () => {
    const late = writeAs(people.member, { longestMilliseconds: 50 }, async () => {
      await new Promise((later) => setTimeout(later, 300));
      return gap();
    });
    const error: unknown = await late.catch((why: unknown) => why);
    expect(error).not.toBeInstanceOf(TypeError);
    expect(isUnavailable(error)).toBe(true);
  });

  it('is told as it is while the transaction stands', async () => {
    await expect(readAs(people.member, async () => gap())).rejects.toBeInstanceOf(TypeError);
    await expect(writeAs(people.member, {}, async () => gap())).rejects.toBeInstanceOf(TypeError);
  });

  it('is never answered: rows missed by a transaction that ran out of time are thrown away', async () => {
    const late = writeAs(people.member, { longestMilliseconds: 50 }, async () => {
      await new Promise((later) => setTimeout(later, 300));
      return ok([]);
    });
    await expect(late).rejects.toSatisfy(isUnavailable);
  });

  it('is no refusal either: what was not found for want of time is not told as not there', async () => {
    const late = writeAs(people.member, { longestMilliseconds: 50 }, async () => {
      await new Promise((later) => setTimeout(later, 300));
      return notFound;
    });
    await expect(late).rejects.toSatisfy(isUnavailable);
    expect(await writeAs(people.member, {}, async () => notFound)).toEqual(notFound);
  });
});
