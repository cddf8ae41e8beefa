import type { Page } from '@playwright/test';
import { daysAgo, fillDayBoxes, submit } from './fill';

type DaysAgo = { readonly from: number; readonly to: number };

/**
 * Days of the reports that tests publish and read. Published reports that share days are held against each other, and
 * what would tell of few sites is withheld: these share none with each other, nor with the year that the demo has
 * published and the year before it.
 */
export const publishedDays = {
  toFunder: { from: 1060, to: 900 },
  byLink: { from: 890, to: 740 },
} as const satisfies Record<string, DaysAgo>;

/** Builds a report as a coordinator and stays on its page, a draft. */
export async function buildReport(page: Page, title: string, days?: DaysAgo): Promise<string> {
  await page.goto('/reports/new');
  await page.locator('[name="title"]').fill(title);
  await fillDayBoxes(page, 'from', daysAgo(days?.from ?? 370 + Math.floor(Math.random() * 300)));
  if (days !== undefined) await fillDayBoxes(page, 'to', daysAgo(days.to));
  await submit(page);
  await page.waitForURL(/\/reports\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}
