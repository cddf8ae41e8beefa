import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { choose, fillMass, submit } from './fill';
import { corin, signInByForm, wren } from './people';
import { findSignal, loseSignal } from './signal';

// Part of the day has no signal, of which a phone complains on its console: these pages are not listened to.
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const harvests = [210, 340, 185, 420, 265, 310, 155, 230, 375, 290];

async function signedIn(context: BrowserContext, email: string): Promise<Page> {
  const page = await context.newPage();
  await signInByForm(page, email);
  return page;
}

async function runTheBath(page: Page): Promise<void> {
  await page.goto('/treatments/new?methodKind=hot_water_bath');
  await choose(page, 'siteId', /./, 1);
  await submit(page);
  await page.waitForURL(/\/treatments\/[0-9a-f-]{36}/);
  const run = new URL(page.url()).pathname;
  for (const celsius of ['71', '68']) {
    await page.goto(`${run}/readings/new`);
    await page.locator('[name="celsius"]').fill(celsius);
    await submit(page);
    await page.waitForURL((url) => url.pathname === run);
  }
  await expect(page.locator('main')).toContainText(/68(\.0)?\s°C/);
}

/** A batch of 24 bags like the last one, and its code. */
async function inoculate(page: Page): Promise<{ path: string; code: string }> {
  await page.goto('/batches/new?repeat=last');
  await page.locator('[name="unitCount"]').fill('24');
  await fillMass(page, 'filledMass', '36');
  await submit(page);
  await page.waitForURL(/\/batches\/[0-9a-f-]{36}\?saved=yes/, { timeout: 20_000 });
  const heading = await page.getByRole('heading', { level: 1 }).textContent();
  return { path: new URL(page.url()).pathname, code: /[A-Z]{3}-\d{3}/.exec(heading ?? '')?.[0] ?? '' };
}

/** A label for each bag, as the PDF that the page's button asks for. Starts where the batch was just saved. */
async function printLabels(page: Page): Promise<void> {
  await page.getByRole('link', { name: /label/i }).first().click();
  await page.waitForURL(/\/labels\?/);
  const asked = new URL(page.url());
  const pdf = await page.request.get(`/labels/pdf${asked.search}`);
  expect(pdf.headers()['content-type']).toBe('application/pdf');
  expect((await pdf.body()).subarray(0, 5).toString()).toBe('%PDF-');
}

async function weighAgain(page: Page, grams: number): Promise<void> {
  await page.locator('[name="fresh"]').fill(`${grams} g`);
  await page.locator('form.quick-form button[type="submit"]').click();
  await expect(page.getByRole('button', { name: /^Weigh again from / })).toBeVisible();
}

test('a whole day: bath and readings, 24 bags and their labels, an afternoon with no signal, and the coordinator sees it all', async ({
  browser,
}) => {
  test.setTimeout(150_000);
  const context = await browser.newContext(phone);
  const page = await signedIn(context, corin);
  await runTheBath(page);
  const batch = await inoculate(page);
  await printLabels(page);
  await page.goto('/today');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.waitForTimeout(1500);

  await loseSignal(context);
  await page.goto('/quick/harvest');
  await page.locator('.tile').first().click();
  for (const [at, grams] of harvests.entries()) {
    if (at > 0) await page.getByRole('button', { name: /^Weigh again from / }).click();
    await weighAgain(page, grams);
  }
  await page.goto('/quick/check');
  await page.getByText(/^All \d+ open batches$/).click();
  await page.locator('label.tile', { hasText: batch.code }).click();
  await page.locator('[name="kind"][value="all_clean"]').check();
  await page.locator('form.quick-form button[type="submit"]').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Kept on this phone/);
  await page.goto('/quick/contamination');
  await page.locator('.tile').nth(1).click();
  await page.locator('[name="sign"][value="green"]').check();
  await page.locator('[name="units"]').fill('1');
  await page.locator('[name="action"][value="discarded"]').check();
  await page.locator('form.quick-form button[type="submit"]').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Kept on this phone/);
  await page.goto('/today');
  await expect(page.getByRole('link', { name: '12 entries not sent yet' })).toBeVisible();

  await findSignal(context);
  await page.goto('/unsent');
  await expect(page.locator('.entry-sent')).toHaveCount(12, { timeout: 30_000 });
  await context.close();

  const desk = await browser.newContext();
  const coordinator = await signedIn(desk, wren);
  await coordinator.goto('/weighings');
  for (const grams of harvests)
    await expect(coordinator.getByText(new RegExp(`^${grams}\\sg$`)).first()).toBeVisible();
  await coordinator.goto(batch.path);
  await expect(coordinator.locator('main')).toContainText(/24 bags/);
  await expect(coordinator.locator('main')).toContainText(/Looked/);
  await desk.close();
});
