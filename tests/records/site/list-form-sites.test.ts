import { Client } from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { manySites, siteByCode } from '../../support/many-sites';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;

type Ask = Parameters<typeof listFormSites>[1];
const offered = (ask: Ask, actor: Actor = people.coordinator) =>
  readAs(actor, (context) => listFormSites(context, ask));
const all = async (actor: Actor = people.coordinator) =>
  (await readAs(actor, listSites)).map(({ id, name, timeZone }) => ({ id, name, timeZone }));

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  await manySites(admin, people.millLane);
}, 120_000);
afterAll(() => admin.end());
beforeEach(() => admin.query('update site set left_at = null, closed_on = null, voided_at = null'));

/** Leaves so many sites of Larkmoor, the growers' own among them. */
async function leaveOpen(count: number): Promise<void> {
  await admin.query(
    `update site set left_at = now() where id in
       (select id from site where network_id = (select network_id from site where id = $1)
        order by code like 'G-%', code offset $2)`,
    [people.millLane, count],
  );
}

describe('the sites of a form where all of them can be listed', () => {
  it('are all, by name, whatever its address asks for', async () => {
    await leaveOpen(mostSitesListed);
    const sites = await all();
    expect(sites).toHaveLength(mostSitesListed);
    for (const asked of [undefined, people.quarry, 'no id'])
      expect(await offered({ asked, own: people.millLane })).toEqual({
        ...{ sites, many: false, chosen: undefined },
      });
  });

  it('are for a member of a large network their own', async () => {
    expect(await all()).toHaveLength(120);
    const own = await offered({ asked: people.quarry }, people.member);
    expect(own).toEqual({ sites: await all(people.member), many: false, chosen: undefined });
    expect(own.sites.map(({ id }) => id)).toEqual([people.millLane]);
  });
});

describe('the sites of a form where there are too many to list', () => {
  it('are none before one is known, from the first that is too many', async () => {
    await leaveOpen(mostSitesListed + 1);
    for (const asked of [undefined, '', 'no id', [people.millLane], people.saltbrookSite])
      expect(await offered({ asked })).toEqual({ sites: [], many: true, chosen: undefined });
  });

  it('are the one asked for, however its id is written', async () => {
    const { sites, chosen } = await offered({ asked: people.quarry.toUpperCase() });
    expect(sites).toEqual([{ id: people.quarry, name: 'Quarry Farm', timeZone: 'America/New_York' }]);
    expect(chosen).toEqual(sites[0]);
  });

  it('are the record’s own where no other is asked for, and both where one is', async () => {
    const own = people.millLane;
    for (const asked of [undefined, people.saltbrookSite])
      expect(await offered({ asked, own })).toMatchObject({ sites: [{ id: own }], chosen: { id: own } });
    expect(await offered({ asked: people.quarry, own })).toMatchObject({
      sites: [{ id: own }, { id: people.quarry }],
      chosen: { id: people.quarry },
    });
    expect((await offered({ asked: own, own })).sites).toHaveLength(1);
  });

  it('leave out one that has left or, where something begins, that is closed, unless it is the record’s own', async () => {
    const gone = await siteByCode(admin, 'G-007');
    const closed = await siteByCode(admin, 'G-008');
    await admin.query('update site set left_at = now() where id = $1', [gone]);
    await admin.query("update site set closed_on = '2026-01-01' where id = $1", [closed]);
    expect((await offered({ asked: gone })).chosen).toBeUndefined();
    expect((await offered({ asked: closed, open: true })).chosen).toBeUndefined();
    expect((await offered({ asked: closed })).chosen?.id).toBe(closed);
    for (const own of [gone, closed])
      expect((await offered({ asked: undefined, own, open: true })).chosen?.id).toBe(own);
  });

  it('are read without the rows of all the others', async () => {
    const read: number[] = [];
    const watched = ({ db, actor }: ReadContext): ReadContext => {
      const findMany: typeof db.site.findMany = (async (ask: Parameters<typeof db.site.findMany>[0]) => {
        const rows = await db.site.findMany(ask);
        read.push(rows.length);
        return rows;
      }) as never;
      return { actor, db: { site: { findMany } } as never };
    };
    await readAs(people.coordinator, (context) =>
      listFormSites(watched(context), { asked: people.quarry, own: people.millLane }),
    );
    expect(read).toEqual([mostSitesListed + 1, 2]);
  });
});
