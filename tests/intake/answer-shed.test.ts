import { beforeAll, describe, expect, it } from 'vitest';
import { answerShed } from '@/app/api/shed/answer-shed';
import type { Actor } from '@/lib/access/actor';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { startBags } from '../support/bags';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed } from '../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-05-20T15:00:00Z');
let people: Growers;
let stock: Shed;
let batchId: string;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  batchId = await startBags(people, stock);
});

function get(who: Actor | undefined, tag?: string): Promise<Response> {
  const request = new Request(
    'http://localhost:3000/api/shed',
    tag ? { headers: { 'if-none-match': tag } } : {},
  );
  return answerShed(request, async () => (who ? { person: who, actor: who } : undefined), now);
}
const snapshot = async (who: Actor): Promise<ShedSnapshot> => (await get(who)).json();

describe('what a phone keeps', () => {
  it('is the person’s, with the open batches and running treatments of their sites', async () => {
    const { person, network, batches, runs } = await snapshot(people.member);
    expect(person).toMatchObject({ id: people.member.personId, language: 'en', massUnit: 'kg' });
    expect(network.id).toBe(people.member.networkId);
    expect(batches.find(({ id }) => id === batchId)).toMatchObject({
      liveUnits: 20,
      siteName: 'Mill Lane Garden',
    });
    expect(runs.map(({ code }) => code)).toEqual(['BATH-1']);
  });

  it('tells what is due in the person’s language, each line with the form it needs', async () => {
    const { due } = await snapshot({ ...people.member, language: 'es', region: 'es-US' });
    expect(due.length).toBeGreaterThan(0);
    for (const line of due) expect(line.href).toMatch(/^\/(quick|batches|treatments|weighings)\//);
    const english = await snapshot(people.member);
    expect(due.map(({ text }) => text)).not.toEqual(english.due.map(({ text }) => text));
  });

  it('holds nothing of another site, another network or for a funder', async () => {
    for (const who of [people.neighbour, people.stranger, people.funder]) {
      const text = JSON.stringify(await snapshot(who));
      expect(text).not.toContain(batchId);
      expect(text).not.toContain('BATH-1');
    }
  });

  it('is not sent again while it is the same, and is when something changed or somebody else asks', async () => {
    const first = await get(people.member);
    const tag = first.headers.get('etag') ?? '';
    expect((await get(people.member, tag)).status).toBe(304);
    expect((await get(people.coordinator, tag)).status).toBe(200);
    await startBags(people, stock);
    expect((await get(people.member, tag)).status).toBe(200);
  });

  it('is kept by no cache on the way', async () => {
    const { headers } = await get(people.member);
    expect(headers.get('cache-control')).toBe('private, no-store');
    expect(headers.get('vary')).toBe('Cookie');
  });

  it('is refused without a sign-in', async () => {
    const response = await get(undefined);
    expect(response.status).toBe(401);
    expect(await response.json()).toMatchObject({ kind: 'refused', type: 'tag:pinset,2026:problem/sign-in' });
  });
});
