import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { findCountedSites } from '@/lib/records/site/find-counted-sites.query';
import { findSites } from '@/lib/records/site/find-sites.query';
import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  await admin.query(
    `insert into site (network_id, id, code, name, kind, time_zone, trim_default)
     select network_id, gen_random_uuid(), 'G-' || n, case n when 7 then '7 % Yard' else 'Garden ' || lpad(n::text, 3, '0') end,
       kind, time_zone, trim_default
     from site, generate_series(1, 120) n where id = $1`,
    [people.millLane],
  );
}, 120_000);
afterAll(() => admin.end());

const found = (raw: object) =>
  readAs(people.coordinator, (context) => findSites(context, siteSearchInput.parse(raw)));
const namesOf = ({ sites }: { readonly sites: readonly { readonly name: string }[] }) =>
  sites.map(({ name }) => name);

describe('a search among sites', () => {
  it('finds them by any part of the name or the code, however it is written', async () => {
    expect(namesOf(await found({ siteName: 'GARDEN 11' }))).toEqual(
      Array.from({ length: 10 }, (_, at) => `Garden 11${at}`),
    );
    expect(namesOf(await found({ siteName: 'g-120' }))).toEqual(['Garden 120']);
    expect(await found({ siteName: 'nowhere' })).toMatchObject({ sites: [], total: 0, page: 1, pages: 1 });
  });

  it('takes a percent sign and an underscore as they are', async () => {
    expect(namesOf(await found({ siteName: '%' }))).toEqual(['7 % Yard']);
    expect(namesOf(await found({ siteName: '_' }))).toEqual([]);
    expect(namesOf(await found({ siteName: '\\' }))).toEqual([]);
  });

  it('has every site on one page or another, once, and the last page where a later one is asked for', async () => {
    const pages = [await found({}), await found({ sitePage: '2' }), await found({ sitePage: '3' })];
    expect(pages.map(({ sites, total, pages: all }) => [sites.length, total, all])).toEqual([
      [50, 122, 3],
      [50, 122, 3],
      [22, 122, 3],
    ]);
    const names = pages.flatMap(namesOf);
    expect(new Set(names).size).toBe(122);
    expect(names).toEqual((await readAs(people.coordinator, listCountedSites)).map(({ name }) => name));
    expect(namesOf(await found({ sitePage: '9' }))).toEqual(namesOf(await found({ sitePage: '3' })));
  });

  it('counts batches of the sites of its page as the whole list does', async () => {
    const search = siteSearchInput.parse({ siteName: 'mill' });
    const page = await readAs(people.coordinator, (context) => findCountedSites(context, search));
    const all = await readAs(people.coordinator, (context) => listCountedSites(context, search));
    expect(page.sites).toEqual(all);
    expect(all.map(({ id }) => id)).toEqual([people.millLane]);
  });
});

describe('the sites that a filter offers', () => {
  it('are one more than are listed where there are too many, and always the chosen one', async () => {
    const offered = (chosen: string | null) =>
      readAs(people.coordinator, (context) => listSiteNames(context, chosen));
    const [last] = (await found({ siteName: 'quarry' })).sites;
    if (last === undefined) throw new Error('no such site');
    expect(await offered(null)).toHaveLength(mostSitesListed + 1);
    expect((await offered(null)).map(({ id }) => id)).not.toContain(last.id);
    const chosen = await offered(last.id);
    expect(chosen).toHaveLength(mostSitesListed + 2);
    expect(chosen.at(-1)).toEqual({ id: last.id, name: last.name });
  });

  it('have the chosen one also where it has left and is offered no more', async () => {
    const [gone] = (await found({ siteName: 'g-120' })).sites;
    if (gone === undefined) throw new Error('no such site');
    await admin.query(`update site set left_at = now() where id = $1`, [gone.id]);
    expect(await found({ siteName: 'g-120' })).toMatchObject({ total: 0 });
    const names = await readAs(people.coordinator, (context) => listSiteNames(context, gone.id));
    expect(names.at(-1)).toEqual({ id: gone.id, name: 'Garden 120' });
  });
});
