import { expect, type Page } from '@playwright/test';
import { submit } from './fill';
import { below, type FormPage } from './find-address';
import { wren } from './people';

/** No run of the demo has a note, so one is written first; another worker may do so at the same moment. */
async function notedRun(page: Page): Promise<string> {
  const run = await below('/treatments')(page);
  const words = run.replace('/treatments/', '/words/treatment-run/');
  await expect(async () => {
    await page.goto(words);
    if (await page.locator('main form [name="reason"]').isVisible()) return;
    await page.goto(`${run}/correct`);
    await page.locator('[name="note"]').fill('the thermometer of Juna Merrow');
    await page.locator('[name="reason"]').fill('forgotten then');
    await Promise.all([page.waitForResponse((answer) => answer.request().method() === 'POST'), submit(page)]);
    await page.goto(words);
    await expect(page.locator('main form [name="reason"]')).toBeVisible();
  }).toPass({ intervals: [1000, 2000, 4000] });
  return words;
}

/** Notes that are taken out by themselves. */
export const wordsForms: readonly FormPage[] = [
  { route: '/words/[kind]/[id]', as: wren, find: notedRun, keeps: false },
];
