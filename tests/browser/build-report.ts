import type { Page } from '@playwright/test';
import { daysAgo, fillDayBoxes, submit } from './fill';

/**
 * The days before today on which the reports that tests publish begin. Published reports are held against each other,
 * and a difference of a few days, or of what one test weighed meanwhile, would be one site's: these lie apart by months
 * and keep away from the demo's own published year.
 */
export const publishedFrom = { toFunder: 560, byLink: 660, formOfLinks: 460 } as const;

/** Builds a report as a coordinator and stays on its page, a draft; without a first day for one that stays a draft. */
export async function buildReport(page: Page, title: string, fromDaysAgo = 370): Promise<string> {
  await page.goto('/reports/new');
  await page.locator('[name="title"]').fill(title);
  await fillDayBoxes(page, 'from', daysAgo(fromDaysAgo + Math.floor(Math.random() * 30)));
  await submit(page);
  await page.waitForURL(/\/reports\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}
