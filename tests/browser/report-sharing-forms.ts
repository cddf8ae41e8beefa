import type { Page } from '@playwright/test';
import { buildReport } from './build-report';
import { daysAgo, fillDay, submit } from './fill';
import type { FormPage } from './find-address';
import { wren } from './people';

/** A story in a new draft of its own; answers the address of the draft's stories. */
export async function tellStory(page: Page, report: string, title: string): Promise<string> {
  await page.goto(`${report}/stories/new`);
  await page.locator('[name="title"]').fill(title);
  await page.locator('[name="words"]').fill('It comes to the shed now.');
  await page.locator('[name="photoId"]').nth(1).check();
  await page.locator('[name="pictureAlt"]').fill('A bag with caps');
  await page.locator('[name="consent"]').check();
  await fillDay(page, 'consentOn', daysAgo(30));
  await submit(page);
  await page.waitForURL((url) => url.pathname === `${report}/stories`);
  return `${report}/stories`;
}

/** The demo's own: of two reports over days that meet, published at one moment, the second has to be built anew. */
async function publishedReport(page: Page): Promise<string> {
  await page.goto('/reports');
  const link = page.getByRole('link', { name: 'Larkmoor Growers: the last year' });
  return (await link.getAttribute('href')) ?? '';
}

/** Forms of stories and links of a report. */
export const reportSharingForms: readonly FormPage[] = [
  {
    route: '/reports/[id]/stories/new',
    as: wren,
    find: async (page) => `${await buildReport(page, `Story ${Date.now()}`)}/stories/new`,
  },
  {
    route: '/reports/[id]/stories/[story]/withdraw',
    as: wren,
    keeps: false,
    find: async (page) => {
      const report = await buildReport(page, `Consent ${Date.now()}`);
      await tellStory(page, report, 'A story');
      return (
        (await page.getByRole('link', { name: 'Write down a withdrawn consent' }).getAttribute('href')) ?? ''
      );
    },
  },
  {
    route: '/reports/[id]/links/new',
    as: wren,
    find: async (page) => `${await publishedReport(page)}/links/new`,
  },
];
