import type { Page } from '@playwright/test';
import { daysAgo, fillMass, submit } from './fill';
import { expect, odell, signInByForm, test } from './people';

test.use({ javaScriptEnabled: false });

/** Opens a batch of the person's own site old enough to crop, so that nothing is asked about the harvest. */
async function openBatch(page: Page): Promise<string> {
  await page.goto(`/batches?state=open&container=bag&to=${daysAgo(40)}`);
  await page.locator('main tbody a[href^="/batches/"]').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Batch /);
  return new URL(page.url()).pathname;
}

test('without script a member signs in, records a look and weighs a harvest', async ({ page }) => {
  await signInByForm(page, odell);
  const batch = await openBatch(page);

  await test.step('one tap records a look', async () => {
    const looks = page.getByText('Looked at all units, none newly contaminated');
    const before = await looks.count();
    await page.getByRole('button', { name: 'Looked at all: none contaminated' }).click();
    await expect(page.getByText('Saved: all units looked at, none newly contaminated')).toBeVisible();
    expect(await looks.count()).toBe(before + 1);
  });

  await test.step('a harvest is weighed', async () => {
    await page.goto(`/weighings/new?batch=${batch.split('/').at(-1)}`);
    await fillMass(page, 'fresh', '1.25');
    await submit(page);
    await page.waitForURL(/\/weighings\/[0-9a-f-]{36}/);
    // 1.25 kg for a reader of pounds.
    await expect(page.locator('main')).toContainText(/2\slb\s12\soz/);
    await page.goto(batch);
    await expect(page.locator('main')).toContainText(/Harvest of 2\slb\s12\soz/);
  });
});

test('without script a wrong password is answered in the page and the e-mail stays', async ({ page }) => {
  await page.goto('/sign-in');
  await page.locator('[name="email"]').fill('nobody@larkmoor.example');
  await page.locator('[name="password"]').fill('not the password');
  await submit(page);
  await expect(page.locator('.error-summary')).toBeVisible();
  await expect(page).toHaveTitle(/^Error: /);
  await expect(page.locator('[name="email"]')).toHaveValue('nobody@larkmoor.example');
});
