import { expect, test, wren } from './people';

test('a site is looked for by name on the way from a filter, and what else was chosen stays', async ({
  openAs,
}) => {
  const page = await openAs(wren);
  await page.goto('/sites/choose?next=/batches&container=bag&state=open');
  await page.getByRole('textbox', { name: 'Part of its name or code' }).fill('nowhere at all');
  await page.getByRole('button', { name: 'Look for it' }).click();
  await expect(page.getByText('No site has “nowhere at all” in its name or code.')).toBeVisible();

  await page.getByRole('textbox', { name: 'Part of its name or code' }).fill('');
  await page.getByRole('button', { name: 'Look for it' }).click();
  const sites = page.locator('main .due-lines a');
  await expect(sites.first()).toBeVisible();
  const name = (await sites.first().textContent()) ?? '';
  await sites.first().click();
  await page.waitForURL((url) => url.pathname === '/batches' && url.searchParams.has('site'));
  const { searchParams } = new URL(page.url());
  expect(searchParams.get('container')).toBe('bag');
  expect(searchParams.get('state')).toBe('open');
  await expect(page.locator('.chips .chip').filter({ hasText: name })).toBeVisible();
});

test('a choice of a site leads nowhere but into the product', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/sites/choose?next=//elsewhere.example');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('There is nothing to see here');
  await expect(page.locator('a[href*="elsewhere"]')).toHaveCount(0);
});
