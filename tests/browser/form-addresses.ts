import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { submit } from './fill';
import { below, type FormPage, inStory, linkOn, openBatch, uuid } from './find-address';
import { moduleForms } from './module-forms';
import { ives, type OpenAs, odell, wren } from './people';

const findingPattern = new RegExp(`^/batches/${uuid}/findings/${uuid}/follow-up$`);
const followUpPattern = new RegExp(`^/batches/${uuid}/follow-ups/${uuid}/correct$`);

/** The link to an entry of a batch; where it has none yet, one is recorded by the form at `address`. */
async function entryOf(
  page: Page,
  address: string,
  { unit, choice, pattern }: { unit?: string; choice: string; pattern: RegExp },
): Promise<string> {
  const batch = address.split('/').slice(0, 3).join('/');
  const earlier = await linkOn(page, batch, pattern);
  if (earlier !== undefined) return earlier;
  await page.goto(address);
  if (unit !== undefined) await page.locator('[name="units"]').fill(unit);
  await page.locator(`[name="${choice}"]`).last().check();
  await Promise.all([page.waitForResponse((answer) => answer.request().method() === 'POST'), submit(page)]);
  // Another worker may record the same entry at the same moment, and this form is then refused: the link counts.
  let found: string | undefined;
  await expect(async () => {
    found = await linkOn(page, batch, pattern);
    expect(found, `an entry like ${pattern} of ${batch}`).toBeDefined();
  }).toPass({ intervals: [1000, 2000, 4000] });
  return found ?? batch;
}

/** The demo has no follow-up of a finding, so one is recorded first. */
async function followUp(page: Page): Promise<string> {
  const address = await inStory(findingPattern)(page);
  return entryOf(page, address, { choice: 'action', pattern: followUpPattern });
}

/** Few batches of the demo lost units to another cause, so one is lost first. */
function afterLoss(pattern: RegExp): (page: Page) => Promise<string> {
  return async (page) => {
    const address = await below(openBatch, '/losses/new')(page);
    return entryOf(page, address, { unit: '1', choice: 'cause', pattern });
  };
}

/** An invitation for a person who is not signed in. */
async function invitation(_page: Page, openAs: OpenAs): Promise<string> {
  const coordinator = await openAs(wren);
  await coordinator.goto('/people/invite');
  await coordinator.locator('[name="role"][value="funder"]').check();
  await submit(coordinator);
  const link = coordinator.getByText(/\/join\/[\w-]+/).first();
  const address = /\/join\/[\w-]+/.exec((await link.textContent()) ?? '')?.[0];
  if (address === undefined) throw new Error('No invitation was shown');
  return address;
}

/** The one-time link of a first coordinator, which the server of these tests leaves beside the sign-ins. */
async function setupLink(): Promise<string> {
  const folder = path.dirname(process.env.PINSET_SIGN_INS ?? '');
  return (await readFile(path.join(folder, 'setup-link.txt'), 'utf8')).trim();
}

/** The demo keeps no label sheet of its own, so one is added first. */
async function labelSheet(page: Page): Promise<string> {
  const pattern = new RegExp(`^/labels/sheets/${uuid}/correct$`);
  const earlier = await linkOn(page, '/labels/sheets', pattern);
  if (earlier !== undefined) return earlier;
  await page.goto('/labels/sheets/new');
  const sizes = {
    pageWidthMm: 210,
    pageHeightMm: 297,
    labelWidthMm: 70,
    labelHeightMm: 37,
    columns: 3,
    rows: 8,
  };
  await page.locator('[name="name"]').fill(`Sheet ${Date.now()}`);
  for (const [name, size] of Object.entries(sizes)) await page.locator(`[name="${name}"]`).fill(String(size));
  await submit(page);
  await page.waitForURL((url) => url.pathname !== '/labels/sheets/new');
  const found = await linkOn(page, '/labels/sheets', pattern);
  if (found === undefined) throw new Error('No label sheet is linked');
  return found;
}

/** A place of the first site of a person's list that has one; the demo has two at Mill Lane. */
function ofPlace(rest: string): (page: Page) => Promise<string> {
  return async (page) => {
    const site = await below('/sites')(page);
    const found = await linkOn(page, site, new RegExp(`^/sites/${uuid}/places/${uuid}$`));
    if (found === undefined) throw new Error(`No place is linked on ${site}`);
    return found + rest;
  };
}

/** A link of the first trial that has such a one: drafts can be changed, running trials noted, filled and ended. */
function inTrial(pattern: RegExp): (page: Page) => Promise<string> {
  return async (page) => {
    await page.goto('/trials');
    const trials = await page
      .locator('main tbody a[href^="/trials/"]')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    for (const trial of trials.filter((address) => !address.endsWith('/result'))) {
      const found = await linkOn(page, trial, pattern);
      if (found !== undefined) return found;
    }
    throw new Error(`No trial has a link like ${pattern}`);
  };
}

const containers = ['bag', 'bucket', 'tray', 'bed', 'log', 'block'] as const;
const methods = ['hot_water_bath', 'cold_lime_soak', 'cold_ferment', 'steam'] as const;
const entries = ['looks', 'findings', 'losses', 'checks'] as const;
const voidable = ['look', 'finding', 'loss', 'check', 'weighing'] as const;
const entryFinder = (kind: string, pattern: string) =>
  kind.startsWith('loss') ? afterLoss(new RegExp(pattern)) : inStory(new RegExp(pattern));
const setting = ['materials', 'methods', 'species', 'windows'] as const;

export const formPages: readonly FormPage[] = [
  ...moduleForms,
  { route: '/account', as: ives, keeps: 'name' },
  { route: '/account/password', as: ives, keeps: false },
  ...containers.map((container) => ({
    route: '/batches/new',
    name: `a new ${container}`,
    as: ives,
    find: async () => `/batches/new?container=${container}`,
  })),
  {
    route: '/batches/new',
    name: 'a repeat of the last batch',
    as: ives,
    find: async () => '/batches/new?repeat=last',
  },
  { route: '/batches/[id]/correct', as: wren, find: below(openBatch, '/correct') },
  { route: '/batches/[id]/close', as: ives, find: below(openBatch, '/close'), keeps: false },
  { route: '/batches/[id]/reopen', as: ives, find: below('/batches?state=closed', '/reopen'), keeps: false },
  { route: '/batches/[id]/second-life', as: wren, find: below(openBatch, '/second-life') },
  { route: '/batches/[id]/place', as: ives, find: below(openBatch, '/place'), keeps: false },
  {
    route: '/batches/[id]/layers/new',
    as: wren,
    find: below('/batches?container=bed&state=open', '/layers/new'),
  },
  ...entries.map((entry) => ({
    route: `/batches/[id]/${entry}/new`,
    as: ives,
    find: below(openBatch, `/${entry}/new`),
  })),
  ...entries.map((entry) => ({
    route: `/batches/[id]/${entry}/[entry]/correct`,
    as: wren,
    find: entryFinder(entry, `^/batches/${uuid}/${entry}/${uuid}/correct$`),
  })),
  { route: '/batches/[id]/findings/[entry]/follow-up', as: wren, find: inStory(findingPattern) },
  { route: '/batches/[id]/follow-ups/[entry]/correct', as: wren, find: followUp },
  { route: '/weighings/new', as: ives },
  { route: '/weighings/[id]/correct', as: ives, find: below('/weighings', '/correct') },
  { route: '/substrate-lots/new', as: wren },
  { route: '/substrate-lots/[id]/correct', as: wren, find: below('/substrate-lots', '/correct') },
  { route: '/substrate-lots/[id]/receive', as: wren, find: below('/substrate-lots', '/receive') },
  { route: '/spawn-lots/new', as: wren },
  { route: '/spawn-lots/[id]/correct', as: wren, find: below('/spawn-lots', '/correct') },
  { route: '/spawn-lots/[id]/receive', as: wren, find: below('/spawn-lots', '/receive') },
  ...methods.map((method) => ({
    route: '/treatments/new',
    name: `a new ${method}`,
    as: ives,
    find: async () => `/treatments/new?methodKind=${method}`,
  })),
  { route: '/treatments/[id]/correct', as: wren, find: below('/treatments', '/correct') },
  { route: '/treatments/[id]/readings/new', as: wren, find: below('/treatments', '/readings/new') },
  { route: '/treatments/[id]/end', as: wren, find: below('/treatments', '/end'), keeps: false },
  { route: '/treatments/[id]/allocate', as: wren, find: below('/treatments', '/allocate') },
  { route: '/sites/new', as: wren },
  { route: '/sites/[id]/correct', as: wren, find: below('/sites', '/correct') },
  { route: '/sites/[id]/methods', as: odell, find: below('/sites', '/methods'), keeps: false },
  { route: '/sites/[id]/places/new', as: ives, find: below('/sites', '/places/new') },
  { route: '/sites/[id]/places/[place]/correct', as: ives, find: ofPlace('/correct') },
  { route: '/sites/[id]/places/[place]/readings/new', as: ives, find: ofPlace('/readings/new') },
  { route: '/people/invite', as: wren },
  { route: '/people/[membershipId]', as: wren, find: below('/people') },
  ...setting.map((kind) => ({
    route: `/settings/${kind}/[id]`,
    as: wren,
    find: async (page: Page) => {
      const found = await linkOn(page, '/settings', new RegExp(`^/settings/${kind}/${uuid}$`));
      if (found === undefined) throw new Error(`No ${kind} are linked`);
      return found;
    },
  })),
  {
    route: '/settings/suitability/[id]',
    as: wren,
    find: async (page: Page) => {
      const found = await linkOn(
        page,
        '/settings/suitability',
        new RegExp(`^/settings/suitability/${uuid}$`),
      );
      if (found === undefined) throw new Error('No row of the table is linked');
      return found;
    },
  },
  { route: '/settings/suitability/new', as: wren },
  {
    route: '/questions/watch/answer',
    as: wren,
    find: async (page) => {
      await page.goto('/questions/watch?days=365');
      const explain = page.getByRole('link', { name: /^Explain: / }).first();
      return (await explain.getAttribute('href', { timeout: 60_000 })) ?? '';
    },
  },
  { route: '/account/digest', as: wren, keeps: false },
  { route: '/labels/sheets/new', as: wren },
  { route: '/labels/sheets/[id]/correct', as: wren, find: labelSheet },
  { route: '/trials/new', as: wren },
  { route: '/trials/[id]/correct', as: wren, find: inTrial(new RegExp(`^/trials/${uuid}/correct$`)) },
  {
    route: '/trials/[id]/notes/new',
    as: wren,
    find: inTrial(new RegExp(`^/trials/${uuid}/notes/new$`)),
    keeps: false,
  },
  { route: '/trials/[id]/end', as: wren, find: inTrial(new RegExp(`^/trials/${uuid}/end$`)), keeps: false },
  {
    route: '/trials/slots/[slot]',
    as: ives,
    find: inTrial(new RegExp(`^/trials/slots/${uuid}$`)),
    keeps: false,
  },
  ...voidable.map((kind) => ({
    route: '/void/[kind]/[id]',
    name: `void a ${kind}`,
    as: wren,
    find: entryFinder(kind, `^/void/${kind}/${uuid}$`),
    keeps: false as const,
  })),
  { route: '/sign-in' },
  { route: '/join/[token]', find: invitation },
  { route: '/setup/[token]', find: setupLink },
  ...(['harvest', 'contamination', 'check'] as const).map((kind) => ({ route: `/quick/${kind}`, as: ives })),
];
