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

/** Forms of tables that are brought in. */
export const importForms: readonly FormPage[] = [
  { route: '/import/[id]/rows/[line]', as: wren, find: needyRow },
];
