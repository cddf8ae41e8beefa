import type { Page } from '@playwright/test';
import { addDays } from '@/lib/growing/calendar-date';

/** The browsers and the demo's sites differ by less than a day, so days long past are days long past at both. */
export function daysAgo(days: number): string {
  return addDays(new Date().toISOString().slice(0, 10), -days);
}

/** Types a day into its three boxes. */
export async function fillDayBoxes(page: Page, name: string, date: string): Promise<void> {
  await page.locator(`[name="${name}__day"]`).fill(String(Number(date.slice(8, 10))));
  await page.locator(`[name="${name}__month"]`).fill(String(Number(date.slice(5, 7))));
  await page.locator(`[name="${name}__year"]`).fill(date.slice(0, 4));
}

/** Chooses "another day" and types it. */
export async function fillDay(page: Page, name: string, date: string): Promise<void> {
  await page.locator(`[name="${name}__quick"][value="other"]`).check();
  await fillDayBoxes(page, name, date);
}

export async function fillMass(page: Page, name: string, kilograms: string): Promise<void> {
  await page.locator(`[name="${name}"]`).fill(kilograms);
  await page.locator(`select[name="${name}__unit"]`).selectOption('kg');
}

/** Chooses among the options whose words fit; lots stand latest first. */
export async function choose(page: Page, name: string, words: RegExp, nth = 0): Promise<void> {
  const select = page.locator(`select[name="${name}"]`);
  const option = select.locator('option').filter({ hasText: words }).nth(nth);
  await select.selectOption(await option.getAttribute('value'));
}

export async function submit(page: Page): Promise<void> {
  // Beside the button that saves there may be one that only works out sums.
  await page.locator('main form.record-form button[type="submit"]:not([name="workOut"])').click();
}
