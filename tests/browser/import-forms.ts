import type { Page } from '@playwright/test';
import { type FormPage, linkOn, uuid } from './find-address';
import { wren } from './people';

/** A row that needs somebody, of the table that waits in the demo. */
async function needyRow(page: Page): Promise<string> {
  await page.goto('/import');
  await page.getByRole('link', { name: 'straw-before-records.csv' }).first().click();
  await page.waitForURL(new RegExp(`/import/${uuid}$`));
  const found = await linkOn(page, new URL(page.url()).pathname, new RegExp(`^/import/${uuid}/rows/\\d+$`));
  if (found === undefined) throw new Error('No row of the table needs anybody');
  return found;
}

/** Forms of tables that are brought in. */
export const importForms: readonly FormPage[] = [
  { route: '/import/[id]/rows/[line]', as: wren, find: needyRow },
];
