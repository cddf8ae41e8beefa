import type { Page } from '@playwright/test';
import { submit } from './fill';
import { type FormPage, linkOn, uuid } from './find-address';
import { ives } from './people';

const pattern = new RegExp(`^/account/tokens/${uuid}/withdraw$`);

/** Where a token can be withdrawn; the demo has none, so one is made first. */
async function withdrawal(page: Page): Promise<string> {
  const earlier = await linkOn(page, '/account/tokens', pattern);
  if (earlier !== undefined) return earlier;
  await page.goto('/account/tokens/new');
  await page.locator('[name="name"]').fill('Logger in the tent');
  await page.locator('[name="scope"][value="read"]').check();
  await submit(page);
  await page.getByText(/pinset_[\w-]{43}/).waitFor();
  const found = await linkOn(page, '/account/tokens', pattern);
  if (found === undefined) throw new Error('No token is listed');
  return found;
}

/** Forms about tokens for scripts and sensors. */
export const tokenForms: readonly FormPage[] = [
  { route: '/account/tokens/new', as: ives, keeps: 'name' },
  { route: '/account/tokens/[id]/withdraw', as: ives, find: withdrawal, keeps: false },
];
