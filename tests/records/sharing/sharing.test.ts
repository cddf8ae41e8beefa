import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { listHistory } from '@/lib/records/history/list-history.query';
import { agreeSharing } from '@/lib/records/sharing/agree-sharing.command';
import { agreeSharingInput, type SharingLevel } from '@/lib/records/sharing/agree-sharing.input';
import { getSharing } from '@/lib/records/sharing/get-sharing.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { makeWorld, now, type World } from '../../access/world';
import { testDatabase } from '../../support/database';
import { lendToQuarry } from '../../support/lent';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;
let lent: { run: string; later: string };

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  lent = await lendToQuarry(world);
}, 180_000);
afterAll(() => admin.end());

const sharing = (actor: Actor) => readAs(actor, (context) => getSharing(context, world.people.millLane));

async function agree(actor: Actor, withMembers: SharingLevel, withFunder: SharingLevel, revision?: number) {
  const shown = await sharing(world.people.member);
  const raw = { id: world.people.millLane, withMembers, withFunder };
  return runAs(
    actor,
    agreeSharingInput,
    agreeSharing,
    { ...raw, revision: revision ?? shown?.revision ?? 0 },
    { reason: 'asked by the growers' },
  );
}

const source = async () =>
  (await readAs(world.people.neighbour, (context) => getBatch(context, lent.later, now)))?.sources[0];
const runSite = async () =>
  (await readAs(world.people.neighbour, (context) => getTreatment(context, lent.run, now)))?.site;

describe('what a site shares', () => {
  it('is, while nobody has said anything, its name for members and no name for the funder', async () => {
    expect(await sharing(world.people.member)).toMatchObject({
      ...{ revision: 0, withMembers: 'named', withFunder: 'anonymous', mayChange: true },
    });
    expect(await source()).toMatchObject({ site: { kind: 'named', name: 'Mill Lane Garden' } });
  });

  it('lets a site read a run that another made for it, in its list and on its page', async () => {
    const { runs } = await readAs(world.people.neighbour, (context) =>
      listTreatments(context, treatmentFilterInput.parse({})),
    );
    expect(runs.map(({ id, site }) => ({ id, site }))).toContainEqual({
      id: lent.run,
      site: { kind: 'named', name: 'Mill Lane Garden' },
    });
    expect(await runSite()).toMatchObject({ id: null, shown: { kind: 'named' } });
  });

  it('is changed by a member of the site and by nobody else', async () => {
    const { coordinator, neighbour, funder, stranger, member } = world.people;
    for (const actor of [coordinator, neighbour, funder, stranger])
      expect(await agree(actor, 'not_at_all', 'not_at_all')).toEqual({ kind: 'not-found' });
    expect(await agree(member, 'anonymous', 'named')).toMatchObject({ kind: 'ok' });
    expect(await sharing(coordinator)).toMatchObject({
      ...{ withMembers: 'anonymous', withFunder: 'named', mayChange: false, members: 1 },
    });
  });

  it('cannot be changed by a coordinator who goes round the command', async () => {
    const { coordinator } = world.people;
    const { count } = await readAs(coordinator, ({ db }) =>
      db.sharingAgreement.updateMany({ where: {}, data: { withMembers: 'named' } }),
    );
    expect(count).toBe(0);
  });

  it('leaves a number instead of the name, the same for each reading', async () => {
    const first = await source();
    expect(first).toMatchObject({ site: { kind: 'anonymous', mark: expect.any(Number) } });
    expect(first?.code).toEqual(expect.any(String));
    expect((await source())?.site).toEqual(first?.site);
    expect((await runSite())?.shown).toEqual(first?.site);
    expect((await runSite())?.timeZone).toBe(world.people.neighbour.networkTimeZone);
  });

  it('takes the code of its bags along when it shares nothing', async () => {
    await agree(world.people.member, 'not_at_all', 'not_at_all');
    expect(await source()).toMatchObject({ code: null, units: 3, site: { kind: 'left-out' } });
  });

  it('has its changes in the history, with the reason, for the site and the coordinator', async () => {
    const { agreementId = '' } = (await sharing(world.people.member)) ?? {};
    for (const actor of [world.people.member, world.people.coordinator]) {
      const lines = await readAs(actor, (context) => listHistory(context, agreementId));
      expect(lines).toHaveLength(2);
      expect(JSON.stringify(lines)).toContain('asked by the growers');
    }
    expect(await readAs(world.people.neighbour, (context) => listHistory(context, agreementId))).toEqual([]);
  });

  it('draws another number when a site that was named stops being so', async () => {
    const marks = new Set<unknown>();
    for (let time = 0; time < 4; time += 1) {
      await agree(world.people.member, 'named', 'anonymous');
      await agree(world.people.member, 'anonymous', 'anonymous');
      marks.add(JSON.stringify((await source())?.site));
    }
    expect(marks.size).toBeGreaterThan(1);
  });

  it('is a conflict when somebody said something else meanwhile', async () => {
    const { revision = 0 } = (await sharing(world.people.member)) ?? {};
    expect(await agree(world.people.member, 'named', 'anonymous')).toMatchObject({ kind: 'ok' });
    expect(await agree(world.people.member, 'anonymous', 'anonymous', revision)).toMatchObject({
      kind: 'conflict',
    });
  });
});
