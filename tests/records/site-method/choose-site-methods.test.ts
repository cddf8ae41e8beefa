import { beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { chooseSiteMethods } from '@/lib/records/site-method/choose-site-methods.command';
import { chooseSiteMethodsInput } from '@/lib/records/site-method/choose-site-methods.input';
import { getSiteMethods } from '@/lib/records/site-method/get-site-methods.query';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const seen = async () => {
  const answer = await readAs(people.member, (context) => getSiteMethods(context, people.millLane));
  if (!answer) throw new Error('not seen');
  return answer;
};
const choose = (revision: number, methodIds: readonly string[], who = people.member) =>
  runAs(who, chooseSiteMethodsInput, chooseSiteMethods, {
    id: people.millLane,
    revision,
    methodIds,
    reason: 'the drum was lent out',
  });
const available = ({ methods }: Awaited<ReturnType<typeof seen>>) =>
  methods.filter((method) => method.available).map(({ id }) => id);

describe('what a site can do', () => {
  it('is what it has used, until somebody says so', async () => {
    expect((await seen()).revision).toBe(0);
    expect((await seen()).methods.length).toBeGreaterThan(3);
    for (const method of (await seen()).methods) expect(method.available).toBe(method.used);
  });

  it('is what a member of the site has ticked, and changes with the next list', async () => {
    expect((await choose(0, [stock.hotWater])).kind).toBe('ok');
    expect(available(await seen())).toEqual([stock.hotWater]);
    expect((await choose((await seen()).revision, [])).kind).toBe('ok');
    expect(available(await seen())).toEqual([]);
  });

  it('is not written over by a list that was drawn before somebody else changed it', async () => {
    const { revision } = await seen();
    expect((await choose(revision, [stock.hotWater])).kind).toBe('ok');
    expect((await choose(revision, [])).kind).toBe('conflict');
    expect(available(await seen())).toEqual([stock.hotWater]);
  });

  it('refuses a method that is none, and is nobody else’s to say', async () => {
    const { revision } = await seen();
    expect((await choose(revision, [people.millLane])).kind).toBe('invalid');
    expect((await choose(revision, [], people.neighbour)).kind).toBe('not-found');
  });
});
