import { expect, type Locator, type Page, test } from '@playwright/test';
import { below, linkOn, openBatch, uuid } from './find-address';
import { ives, signInByForm, wren } from './people';

// A phone without signal complains on its console about each request, so these tests do not listen to it.
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

/** Sends a form without signal and checks that it says so, then has the signal back. */
async function pressWithoutSignal(page: Page, button: Locator): Promise<void> {
  await page.context().setOffline(true);
  await button.click();
  await expect(page.locator('.error-summary')).toContainText('No answer came');
  await expect(page.locator('.error-summary')).toBeFocused();
  await page.context().setOffline(false);
}

const files = (page: Page) =>
  page
    .locator('input[type="file"]')
    .evaluate((box) =>
      [...((box as HTMLInputElement).files ?? [])].map(({ name, size }) => ({ name, size })),
    );

test.use(phone);

test('a table that is sent without signal stays chosen and goes through once there is one', async ({
  page,
}) => {
  await signInByForm(page, wren);
  await page.goto('/import?kind=harvests');
  const buffer = Buffer.from('Batch;Date;Fresh (kg)\r\nOLD-1;2026-05-10;0,9');
  await page.locator('[name="file"]').setInputFiles({ name: 'picked.csv', mimeType: 'text/csv', buffer });
  await page.locator('[name="kind"][value="findings"]').check();
  const look = page.getByRole('button', { name: 'Look at it' });
  await pressWithoutSignal(page, look);
  expect(await files(page)).toEqual([{ name: 'picked.csv', size: buffer.length }]);
  await expect(page.locator('[name="kind"][value="findings"]')).toBeChecked();
  await look.click();
  await page.waitForURL(new RegExp(`/import/${uuid}$`));
  await expect(page.locator('.answer-sentence')).toContainText('1 row was read');
});

test('a table that the server refuses is named as before, with the kind still chosen', async ({ page }) => {
  await signInByForm(page, wren);
  await page.goto('/import?kind=harvests');
  await page.locator('[name="kind"][value="findings"]').check();
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect(page.locator('.error-summary')).toContainText('Choose a file with a table');
  await expect(page.locator('.error-summary')).toBeFocused();
  await expect(page.locator('[name="kind"][value="findings"]')).toBeChecked();
});

test('a photo that is sent without signal stays chosen with its words and is kept once', async ({ page }) => {
  await signInByForm(page, wren);
  const batch = await below(openBatch)(page);
  await page.goto(`${batch}/photos/new`);
  const picture = await page.screenshot();
  const caption = `Pins ${Date.now()}`;
  await page
    .locator('[name="file"]')
    .setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: picture });
  await page.locator('[name="caption"]').fill(caption);
  const submit = page.locator('main form button[type="submit"]');
  await pressWithoutSignal(page, submit);
  expect(await files(page)).toEqual([{ name: expect.any(String), size: expect.any(Number) }]);
  await expect(page.locator('[name="caption"]')).toHaveValue(caption);
  await submit.click();
  await page.waitForURL(/saved=photo#photos$/);
  await expect(page.locator('#photos').getByText(caption)).toHaveCount(1);
  await page.goBack();
  await page
    .locator('[name="file"]')
    .setInputFiles({ name: 'q.png', mimeType: 'image/png', buffer: picture });
  await page.locator('[name="caption"]').fill(`${caption} again`);
  await submit.click();
  await page.waitForURL(/saved=photo#photos$/);
  await expect(page.locator('#photos').getByText(`${caption} again`)).toHaveCount(1);
});

test('a table of a logger keeps its pasted lines and what was said of them without signal', async ({
  page,
}) => {
  await signInByForm(page, ives);
  const site = await below('/sites')(page);
  const place = await linkOn(page, site, new RegExp(`^/sites/${uuid}/places/${uuid}$`));
  await page.goto(`${place}/import`);
  const lines = 'Time,Temperature\n2026-05-10 08:00,17.4\n2026-05-10 09:00,17.9';
  await page.locator('[name="text"]').fill(lines);
  const look = page.locator('button[value="look"]');
  await pressWithoutSignal(page, look);
  await expect(page.locator('[name="text"]')).toHaveValue(lines);
  await look.click();
  await expect(page.locator('button[value="save"]')).toBeVisible();
  const order = page.locator('main form select').first();
  const other = await order.locator('option:not(:checked)').first().getAttribute('value');
  await order.selectOption(other);
  await pressWithoutSignal(page, look);
  await expect(order).toHaveValue(other ?? '');
});

test('a link that was asked for without signal may have been made, and its page says what to do', async ({
  page,
}) => {
  await signInByForm(page, wren);
  await page.goto('/people/invite');
  await page.locator('[name="forName"]').fill('Moss Ferrant');
  await page.locator('[name="role"][value="coordinator"]').check();
  await page.locator('main form button[type="submit"]').click();
  await expect(page.locator('.shown-once')).toBeVisible();
  await page.goto('/people/invitations');
  await page.getByRole('link', { name: 'Moss Ferrant' }).first().click();
  await page.getByRole('button', { name: 'Make a new link' }).click();
  const link = page.getByText(/\/join\/[\w-]+$/);
  const first = await link.textContent();
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Make a new link' }).click();
  await expect(page.locator('.notice[role="alert"]')).toContainText('may have been made without being shown');
  await expect(link).toHaveText(first ?? '');
  await page.context().setOffline(false);
  await page.getByRole('button', { name: 'Make a new link' }).click();
  await expect(link).not.toHaveText(first ?? '');
});
