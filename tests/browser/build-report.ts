import type { Page } from '@playwright/test';
import { daysAgo, fillDayBoxes, submit } from './fill';

/**
 * Builds a report as a coordinator and stays on its page, a draft. Its period begins on a day of its own: reports of one
 * period are held against each other, and other tests publish theirs at the same moment.
 */
export async function buildReport(page: Page, title: string): Promise<string> {
  await page.goto('/reports/new');
  await page.locator('[name="title"]').fill(title);
  await fillDayBoxes(page, 'from', daysAgo(370 + Math.floor(Math.random() * 300)));
  await submit(page);
  await page.waitForURL(/\/reports\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}
