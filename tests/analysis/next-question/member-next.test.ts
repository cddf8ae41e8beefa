import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { networkReader } from '@/lib/access/network-reader';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { parseNextAsked } from '@/lib/analysis/next-question/next-choice.input';
import { askSiteNext } from '@/lib/analysis/next-question/next-question';
import { readNextOptions } from '@/lib/analysis/next-question/read-next-options';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const now = new Date('2026-05-20T15:00:00Z');

async function ask(actor: Actor, siteId: string, query: Record<string, string> = {}) {
  const options = await readAs(actor, (context) => readNextOptions(context, siteId, now));
  const reader = await networkReader(actor);
  if (!options || !reader) return undefined;
  const scope = await readAs(reader, (context) => readQuestionScope(context, parseQuestion({}), now));
  if (!scope) throw new Error('nothing recorded');
  const answer = await askSiteNext(actor, reader, parseNextAsked(query), options, scope, now);
  return { kind: answer.kind, stored: await (answer.kind === 'current' ? answer.stored : answer.next) };
}

const rowsOf = (actor: Actor) =>
  readAs(
    actor,
    ({ db }) => db.$queryRaw<{ question: string; site: string | null }[]>`
      select question, site_id::text as site from fitted_result order by question, site`,
  );

beforeAll(async () => {
  await startBags(people, await shed(people));
});

describe('a member asks what the own site should do next', { timeout: 90_000 }, () => {
  it('and reads an answer that nobody worked out before, of the own site alone', async () => {
    const answer = await ask(people.member, people.millLane);
    expect(answer?.kind).toBe('first');
    expect(answer?.stored.result.siteId).toBe(people.millLane);
    expect((await ask(people.member, people.millLane))?.kind).toBe('current');
    // The whole answer and the part of the other site are there, and only the coordinator reads them.
    const sites = (rows: { site: string | null }[]) => rows.map(({ site }) => site);
    expect(sites(await rowsOf(people.member))).toEqual([people.millLane]);
    expect(sites(await rowsOf(people.coordinator))).toEqual(
      expect.arrayContaining([people.millLane, people.quarry, null]),
    );
    expect(sites(await rowsOf(people.stranger))).toEqual([]);
  });

  it('and a choice of the own is stored for that site alone', async () => {
    const chosen = await ask(people.member, people.millLane, { season: 'winter' });
    expect(chosen?.stored.result).toMatchObject({ siteId: people.millLane, season: '1' });
    const rows = (await rowsOf(people.coordinator)).filter(({ question }) =>
      question.startsWith('next for one'),
    );
    expect(rows.map(({ site }) => site)).toEqual([people.millLane]);
  });

  it('but not of another site', async () => {
    expect(await ask(people.member, people.quarry)).toBeUndefined();
    expect(await ask(people.neighbour, people.millLane)).toBeUndefined();
    expect(await ask(people.stranger, people.millLane)).toBeUndefined();
  });
});

describe('who reads the records of all sites for a model', () => {
  it('is a coordinator of the same network for a member, and nobody for a funder or for a token', async () => {
    const reader = await networkReader(people.member);
    expect(reader).toMatchObject({
      personId: people.coordinator.personId,
      networkId: people.member.networkId,
      role: 'coordinator',
    });
    expect(await networkReader(people.coordinator)).toBe(people.coordinator);
    expect(await networkReader(people.funder)).toBeUndefined();
    const token = { id: people.millLane, mayWrite: false, siteScope: [people.millLane] };
    expect(await networkReader({ ...people.member, token })).toBeUndefined();
  });
});
