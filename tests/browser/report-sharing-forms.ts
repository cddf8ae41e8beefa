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

async function publishedReport(page: Page): Promise<string> {
  const report = await buildReport(page, `Link ${Date.now()}`);
  await page.getByRole('button', { name: 'Publish this report' }).click();
  await page.getByRole('link', { name: 'Links for funders without an account' }).waitFor();
  return report;
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
