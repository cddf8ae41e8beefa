import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Client } from 'pg';
import { createTranslator } from 'use-intl/core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { listNextRuns } from '@/lib/records/trial/list-next-runs.query';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { withFormSite } from '@/lib/ui/sites/with-site';
import { startBags } from '../support/bags';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { manySites } from '../support/many-sites';
import { openForm, siteBox, siteSearch } from '../support/open-form';
import { type Shed, shed } from '../support/shed';
import { startedTrial } from '../support/trials';

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
const app = path.resolve(import.meta.dirname, '../../app');
let few: Growers;
let many: Growers;
let stock: Shed;
let batch: string;

beforeAll(async () => {
  await admin.connect();
  few = await growers(superuser, 'FEW');
  many = await growers(superuser, 'MANY');
  await manySites(admin, many.millLane);
  stock = await shed(many);
  await shed(few);
  batch = await startBags(many, stock);
}, 120_000);
afterAll(() => admin.end());

type Form = { readonly file: string; readonly address: (id: string) => string; readonly for: string };
/** Every form for a new record of one site, with something in its address that has to come along. */
const forms: readonly (readonly [string, Form & { readonly of?: (shed: Shed) => string }])[] = [
  [
    'batches/new',
    { file: 'batches/new', address: () => '/batches/new?container=jar&unitCount=7', for: 'start' },
  ],
  [
    'treatments/new',
    { file: 'treatments/new', address: () => '/treatments/new?methodKind=steam', for: 'record' },
  ],
  [
    'treatments/[id]/allocate',
    {
      ...{ file: 'treatments/[id]/allocate', for: 'record', of: ({ bathRun }) => bathRun },
      address: (id) => `/treatments/${id}/allocate?from=list`,
    },
  ],
  [
    'spawn-lots/[id]/receive',
    {
      ...{ file: 'spawn-lots/[id]/receive', for: 'record', of: ({ oysterSpawn }) => oysterSpawn },
      address: (id) => `/spawn-lots/${id}/receive?from=list`,
    },
  ],
  [
    'substrate-lots/[id]/receive',
    {
      ...{ file: 'substrate-lots/[id]/receive', for: 'record', of: ({ straw }) => straw },
      address: (id) => `/substrate-lots/${id}/receive?from=list`,
    },
  ],
  ...(['sales', 'trainings', 'participants', 'practices'] as const).map(
    (list) =>
      [
        `programme/${list}/new`,
        { file: `programme/${list}/new`, address: () => `/programme/${list}/new?from=list`, for: 'record' },
      ] as const,
  ),
];

describe.each(forms)('the form %s', (_name, { file, address, for: purpose, of }) => {
  const where = () => {
    const id = of?.(stock) ?? '';
    return { asked: address(id), params: { id } };
  };

  it('asks for the site first where there are too many to list, and takes its whole address along', async () => {
    reader.actor = many.coordinator;
    const { asked, params } = where();
    for (const there of [asked, withFormSite(asked, 'none'), withFormSite(asked, many.saltbrookSite)]) {
      const answer = await openForm(file, there, params);
      expect(siteSearch('to' in answer ? answer.to : 'nowhere')).toEqual({
        ...{ page: '/sites/choose', next: there, for: purpose },
      });
    }
  });

  it('lists the site that it came back with, chosen, and leads to another', async () => {
    reader.actor = many.coordinator;
    const { asked, params } = where();
    const there = withFormSite(asked, many.quarry);
    const { options, chosen, other } = siteBox(await openForm(file, there, params));
    expect(options).toEqual([many.quarry]);
    expect(chosen).toBe(many.quarry);
    expect(siteSearch(other?.href ?? '')).toEqual({ page: '/sites/choose', next: there, for: purpose });
  });
});

describe('a form where all sites can be listed', () => {
  it('lists a member of a large network their own, and leads nowhere', async () => {
    reader.actor = many.member;
    for (const [, { file, address, of }] of forms) {
      // Only a coordinator shares a run out.
      if (file.includes('allocate')) continue;
      const id = of?.(stock) ?? '';
      expect(siteBox(await openForm(file, address(id), { id })), file).toEqual({
        ...{ options: [many.millLane], chosen: many.millLane, other: undefined },
      });
    }
  });

  it('lists them all, with none chosen, and leads nowhere', async () => {
    reader.actor = few.coordinator;
    for (const [, { file, address, of }] of forms) {
      if (of !== undefined) continue;
      expect(siteBox(await openForm(file, address(''))), file).toEqual({
        ...{ options: [few.millLane, few.quarry], chosen: '', other: undefined },
      });
    }
  });
});

describe('a form that belongs to a site already', () => {
  const own: readonly { readonly file: string; readonly at: () => string; readonly of?: () => string }[] = [
    { file: 'batches/new', at: () => `/batches/new?repeat=${batch}` },
    { file: 'batches/new', at: () => '/batches/new?repeat=last' },
    {
      ...{ file: 'batches/[id]/second-life', of: () => batch },
      at: () => `/batches/${batch}/second-life?container=jar`,
    },
    { file: 'batches/[id]/correct', of: () => batch, at: () => `/batches/${batch}/correct` },
    {
      ...{ file: 'treatments/[id]/correct', of: () => stock.bathRun },
      at: () => `/treatments/${stock.bathRun}/correct`,
    },
  ];

  it.each(own)(
    '$file begins there, and leads to another, which it then lists as well',
    async ({ file, at, of }) => {
      reader.actor = many.coordinator;
      const { options, chosen, other } = siteBox(await openForm(file, at(), { id: of?.() ?? '' }));
      expect(options).toEqual([many.millLane]);
      expect(chosen).toBe(many.millLane);
      const foreign = withFormSite(at(), many.saltbrookSite);
      expect(siteBox(await openForm(file, foreign, { id: of?.() ?? '' }))).toMatchObject({ options, chosen });
      const to = siteSearch(other?.href ?? '');
      expect(to).toMatchObject({ page: '/sites/choose', next: at() });
      const changed = siteBox(await openForm(file, withFormSite(to.next, many.quarry), { id: of?.() ?? '' }));
      expect(changed.options).toEqual([many.millLane, many.quarry]);
      expect(changed.chosen).toBe(many.quarry);
    },
  );
});

describe('the form of a run that a trial has drawn', () => {
  it('begins at the site of that run, though its address names none', async () => {
    reader.actor = many.coordinator;
    const { id } = await startedTrial(many, stock);
    const slots = await readAs(many.coordinator, listNextRuns);
    const drawn = slots.find(({ trialId, siteId }) => trialId === id && siteId === many.quarry);
    const answer = await openForm('batches/new', `/batches/new?trialSlotId=${drawn?.slotId}`);
    expect(siteBox(answer)).toMatchObject({ options: [many.quarry], chosen: many.quarry });
  });
});

describe('the form of a treatment', () => {
  it('begins with the method that was used last at its site', async () => {
    reader.actor = many.coordinator;
    await admin.query(
      `insert into treatment_run (network_id, code, site_id, method_id, started_at)
       select network_id, 'EARLIER', id, $2, '2026-01-05T08:00:00Z' from site where id = $1`,
      [many.quarry, stock.lime],
    );
    const method = async (site: string) => {
      const answer = await openForm('treatments/new', `/treatments/new?siteId=${site}`);
      return 'to' in answer ? undefined : answer.values.methodId;
    };
    expect(await method(many.quarry)).toBe(stock.lime);
    expect(await method(many.millLane)).toBe(stock.hotWater);
  });
});

describe('a second life of a batch whose site has left', () => {
  it('asks where it begins, and does not begin there', async () => {
    reader.actor = many.coordinator;
    const form = 'batches/[id]/second-life';
    const at = `/batches/${batch}/second-life?container=jar`;
    const leave = (day: string | null) =>
      admin.query('update site set left_at = $2 where id = $1', [many.millLane, day]);
    await leave('2026-11-01T12:00:00Z');
    try {
      const asked = await openForm(form, at, { id: batch });
      expect(siteSearch('to' in asked ? asked.to : 'nowhere')).toEqual({
        ...{ page: '/sites/choose', next: at, for: 'start' },
      });
      const there = siteBox(await openForm(form, withFormSite(at, many.quarry), { id: batch }));
      expect(there).toMatchObject({ options: [many.quarry], chosen: many.quarry });
    } finally {
      await leave(null);
    }
  });
});

describe('the list of every site', () => {
  it('is read only by pages on which several sites are ticked', () => {
    const pages = readdirSync(app, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .filter((file) => readFileSync(path.join(app, file), 'utf8').includes('/list-sites.query'))
      .sort();
    expect(pages).toEqual([
      '(person)/account/tokens/new/page.tsx',
      '(signed)/people/[membershipId]/page.tsx',
      '(signed)/people/invite/page.tsx',
      '(signed)/trials/[id]/correct/page.tsx',
      '(signed)/trials/new/page.tsx',
    ]);
  });
});
