import type { Page } from '@playwright/test';
import { expect, test, wren } from './people';

const table = (rows: readonly (readonly string[])[]) => ({
  name: 'treatments.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(rows.map((row) => row.join(';')).join('\r\n')),
});

const answer = (page: Page) => page.locator('.answer-sentence');

/** Loads the page again until the work on the table is done, as somebody without script does. */
async function done(page: Page, says: string): Promise<void> {
  await expect(async () => {
    await page.reload();
    await expect(answer(page)).toHaveText(says, { timeout: 1_000 });
  }).toPass({ timeout: 120_000 });
}

async function upload(page: Page, file: ReturnType<typeof table>): Promise<void> {
  await page.goto('/import?kind=treatments');
  await page.getByLabel('File', { exact: true }).setInputFiles(file);
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect(answer(page)).toContainText('3 rows were read');
  await page.getByRole('button', { name: 'Check all rows' }).click();
}

test('a table of treatments is looked at, checked, settled, mended and added without script', async ({
  openAs,
}) => {
  test.setTimeout(400_000);
  const page = await openAs(wren, { javaScriptEnabled: false });
  const mark = Date.now().toString(36).toUpperCase();
  const rows = table([
    ['Run', 'Site', 'Method', 'Started', 'Hours'],
    [`${mark}-1`, 'Mill Lane Garden', 'Steam', '2025-03-04 08:00', '2'],
    [`${mark}-2`, 'Mill Lane Garden', `barrel ${mark}`, '2025-03-05 08:00', '2,5'],
    [`${mark}-3`, 'Mill Lane Garden', 'Steam', '31/02/2025', '2'],
  ]);
  await upload(page, rows);
  await done(page, '1 row is new, none is there already, 2 need you.');
  await page.getByLabel(`“barrel ${mark}” in treatment method (1 row)`).selectOption('Steam');
  await page.getByRole('button', { name: 'Use these choices and check again' }).click();
  await done(page, '2 rows are new, none is there already, 1 needs you.');
  await page.getByRole('link', { name: 'Mend row 4' }).click();
  await page.getByLabel('Started').fill('2025-03-06 08:15');
  await page.getByRole('button', { name: 'Check this row' }).click();
  await done(page, '3 rows are new, none is there already, none needs you.');
  await page.getByRole('button', { name: 'Add 3 new rows' }).click();
  await done(page, '3 rows were added. None was there already, none needs you.');

  await upload(page, rows);
  await done(page, 'No row is new, 2 are there already, 1 needs you.');
});
