import { Client } from 'pg';
import { createTranslator } from 'use-intl/core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { UploadForm } from '@/lib/ui/importing/upload-form';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { withFormSite } from '@/lib/ui/sites/with-site';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { manySites, siteByCode } from '../support/many-sites';
import { elementsOf, openPage, siteSearch } from '../support/open-form';

const reader = vi.hoisted((): { actor?: unknown } => ({}));
vi.mock('@/lib/access/current', () => ({
  requireActor: async () => reader.actor,
  currentSigned: async () => ({ person: reader.actor, actor: reader.actor }),
}));
vi.mock('next/navigation', async () => {
  const { Elsewhere } = await import('../support/open-form');
  return {
    redirect: (address: string) => {
      throw new Elsewhere(address);
    },
  };
});
vi.mock('next-intl/server', () => ({
  getLocale: async () => 'en-US',
  getMessages: async () => loadMessages('en'),
  getTranslations: async (namespace: never) =>
    createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace }),
}));

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let few: Growers;
let many: Growers;

beforeAll(async () => {
  await admin.connect();
  few = await growers(superuser, 'FEW');
  many = await growers(superuser, 'MANY');
  await manySites(admin, many.millLane);
}, 120_000);
afterAll(() => admin.end());

describe('the search on the way to a form', () => {
  const links = async (address: string) =>
    elementsOf(await openPage('sites/choose', address)).flatMap(({ props }) =>
      typeof props.href === 'string' ? [props.href] : [],
    );
  const to = (siteFor: string, more = {}) =>
    `/sites/choose?${new URLSearchParams({ next: '/batches/new?container=jar&siteId=old', siteFor, ...more })}`;

  it('leads back to the form with each site found, and to no form without one', async () => {
    reader.actor = many.coordinator;
    expect(await links(to('start', { siteName: 'quarry' }))).toEqual([
      `/batches/new?container=jar&siteId=${many.quarry}`,
    ]);
    expect(await links('/sites/choose?next=/batches&siteName=quarry')).toEqual([
      ...[`/batches?site=${many.quarry}`, '/batches'],
    ]);
  });

  it('finds a site that is closed, but not for something to begin there', async () => {
    reader.actor = many.coordinator;
    const closed = await siteByCode(admin, 'G-042');
    await admin.query("update site set closed_on = '2026-01-01' where id = $1", [closed]);
    expect(await links(to('record', { siteName: 'G-042' }))).toHaveLength(1);
    expect(await links(to('start', { siteName: 'G-042' }))).toEqual([]);
  });

  it('leads nowhere but into the product', async () => {
    reader.actor = many.coordinator;
    for (const next of ['//elsewhere.example', 'https://elsewhere.example/batches/new', '/api/v1/batches'])
      expect(await links(`/sites/choose?${new URLSearchParams({ next, siteFor: 'record' })}`)).toEqual([]);
  });
});

describe('the form of a table that is brought in', () => {
  const box = async (address: string) => {
    const form = elementsOf(await openPage('import', address)).find(({ type }) => type === UploadForm);
    if (form === undefined) throw new Error('no form');
    const { site, values } = form.props as unknown as Parameters<typeof UploadForm>[0];
    return { ids: site.sites.map(({ id }) => id), chosen: values.siteId, other: site.other };
  };

  it('asks for no site first, and leads to one', async () => {
    reader.actor = many.coordinator;
    const none = await box('/import?kind=batches&problem=no-file');
    expect(none).toMatchObject({ ids: [], chosen: '' });
    const { next } = siteSearch(none.other?.href ?? '');
    expect(next).toBe('/import?kind=batches');
    expect(await box(withFormSite(next, many.quarry))).toMatchObject({
      ids: [many.quarry],
      chosen: many.quarry,
    });
    expect(await box(`/import?site=${many.quarry}`)).toMatchObject({
      ids: [many.quarry],
      chosen: many.quarry,
    });
    reader.actor = few.coordinator;
    expect(await box('/import')).toEqual({
      ...{ ids: [few.millLane, few.quarry], chosen: '', other: undefined },
    });
  });
});
