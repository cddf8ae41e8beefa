import { expect, type Page } from '@playwright/test';
import { type FormPage, linkOn, uuid } from './find-address';
import { wren } from './people';

/** A row that needs somebody, of the table that waits in the demo. */
async function needyRow(page: Page): Promise<string> {
  await page.goto('/import');
  await page.getByRole('link', { name: 'straw-before-records.csv' }).first().click();
  await page.waitForURL(new RegExp(`/import/${uuid}$`));
  const file = new URL(page.url()).pathname;
  let found: string | undefined;
  // While another test has a row checked again, the page shows the work instead of the rows.
  await expect(async () => {
    found = await linkOn(page, file, new RegExp(`^/import/${uuid}/rows/\\d+$`));
    expect(found, 'a row of the table needs somebody').toBeDefined();
  }).toPass({ timeout: 60_000 });
  return found ?? file;
}

/** The page that takes back a table of one lot, brought and added for it. */
async function addedTable(page: Page): Promise<string> {
  const main = page.locator('main');
  const text = `Lot;Material;Received on;Weight (kg)\r\nTB-${Date.now().toString(36).toUpperCase()};Wheat straw;2026-05-13;180`;
  await page.goto('/import?kind=substrate_lots');
  const file = { name: 'to-take-back.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
  await page.getByLabel('File', { exact: true }).setInputFiles(file);
  await main.getByRole('button', { name: 'Look at it' }).click();
  await main.getByRole('button', { name: 'Check all rows' }).click({ timeout: 60_000 });
  await main.getByRole('button', { name: 'Add 1 new row' }).click({ timeout: 150_000 });
  await expect(page.locator('.answer-sentence')).toContainText('1 row was added', { timeout: 150_000 });
  return `${new URL(page.url()).pathname}/take-back`;
}

/** Forms of tables that are brought in. */
export const importForms: readonly FormPage[] = [
  { route: '/import/[id]/rows/[line]', as: wren, find: needyRow },
  { route: '/import/[id]/take-back', as: wren, find: addedTable, keeps: false },
];
