import type { Page } from '@playwright/test';
import { below, type FormPage, uuid } from './find-address';
import { wren } from './people';

const kinds = ['spawn-lot', 'substrate-lot'] as const;

const newNotice = (kind: (typeof kinds)[number]) => async (page: Page) =>
  `/lot-notices/new/${kind}/${(await below(`/${kind}s`)(page)).split('/').at(-1)}`;

/** The address that withdraws a notice written for it. */
async function withdrawal(page: Page): Promise<string> {
  await page.goto(await newNotice('spawn-lot')(page));
  await page.getByLabel('What happened').fill('Bags that smell sour');
  await page.getByLabel('What to do').fill('Open one and look');
  await page.getByRole('checkbox').first().check();
  await page.getByRole('button', { name: 'Send the notice' }).click();
  await page.waitForURL(/saved=notice/);
  const link = page.getByRole('link', { name: /^Withdraw the notice/ }).first();
  const found = (await link.getAttribute('href')) ?? '';
  if (!new RegExp(`^/lot-notices/${uuid}/withdraw$`).test(found)) throw new Error('No notice to withdraw');
  return found;
}

/** Forms of notices about lots. */
export const noticeForms: readonly FormPage[] = [
  ...kinds.map((kind) => ({
    route: '/lot-notices/new/[kind]/[id]',
    name: `a notice about a ${kind}`,
    as: wren,
    find: newNotice(kind),
    keeps: 'whatHappened',
  })),
  { route: '/lot-notices/[id]/withdraw', as: wren, find: withdrawal, keeps: false },
];
