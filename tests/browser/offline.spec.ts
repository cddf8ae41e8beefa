import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { corin, ives, signInByForm } from './people';
import { findSignal, loseSignal } from './signal';

// A phone without signal complains on its console about each request, so these tests do not listen to it.
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

async function signedPhone(context: BrowserContext, email: string): Promise<Page> {
  const page = await context.newPage();
  await signInByForm(page, email);
  await page.goto('/today');
  // One visit is enough: the worker has its page, and the phone its copy of the work.
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect
    .poll(() =>
      page.evaluate(async () => {
        const [name] = await caches.keys();
        return name !== undefined && (await (await caches.open(name)).match('/offline')) !== undefined;
      }),
    )
    .toBe(true);
  await expect.poll(() => kept(page, 'snapshots')).toBe(1);
  return page;
}

/** How many rows the phone's own store holds. */
function kept(page: Page, store: 'snapshots' | 'entries'): Promise<number> {
  return page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('pinset');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          if (!database.objectStoreNames.contains(name)) return resolve(-1);
          const count = database.transaction(name).objectStore(name).count();
          count.onsuccess = () => {
            database.close();
            resolve(count.result);
          };
        };
      }),
    store,
  );
}

/** How often the server knows a batch to have been weighed with each mass, in grams. */
async function weighedMasses(page: Page, batchId: string): Promise<ReadonlyMap<number, number>> {
  const file = await (await page.request.get(`/export/harvests.csv?batch=${batchId}`)).text();
  const [head = [], ...rows]: string[][] = parse(file, { bom: true });
  const column = head.findIndex((name) => name.startsWith('Fresh mass'));
  const times = new Map<number, number>();
  for (const row of rows) times.set(Number(row[column]), (times.get(Number(row[column])) ?? 0) + 1);
  return times;
}

async function weigh(page: Page, grams: number): Promise<void> {
  await page.locator('[name="fresh"]').fill(`${grams} g`);
  await page.locator('form.quick-form button[type="submit"]').click();
  await expect(page.getByRole('button', { name: /^Weigh again from / })).toBeVisible();
}

async function openHarvest(page: Page): Promise<string> {
  await page.goto('/quick/harvest');
  await page.locator('.tile').first().click();
  const id = await page.locator('.chosen-batch input').inputValue();
  return id;
}

test('twenty harvests without signal, through reloads and a closed tab, are recorded once each', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, corin);
  await loseSignal(context);
  const batchId = await openHarvest(page);
  // Other tests weigh at this site meanwhile, none of them so little.
  const masses = Array.from({ length: 20 }, (_, at) => 1 + at);
  const before = await weighedMasses(page, batchId);
  for (const grams of masses) {
    if (grams > 1) await page.getByRole('button', { name: /^Weigh again from / }).click();
    await weigh(page, grams);
  }
  await page.goto('/unsent');
  await page.reload();
  await page.reload();
  await expect(page.locator('.entry-waiting')).toHaveCount(20);
  await page.close();
  const again = await context.newPage();
  await again.goto('/today');
  await expect(again.getByRole('link', { name: '20 entries not sent yet' })).toBeVisible();
  await findSignal(context);
  await again.goto('/unsent');
  await expect(again.locator('.entry-sent')).toHaveCount(20, { timeout: 30_000 });
  const after = await weighedMasses(again, batchId);
  const gained = masses.map((grams) => [grams, (after.get(grams) ?? 0) - (before.get(grams) ?? 0)]);
  expect(gained).toEqual(masses.map((grams) => [grams, 1]));
  await context.close();
});

test('no answer of the server loses an entry or holds up the next', async ({ browser }) => {
  test.setTimeout(90_000);
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, corin);
  const statuses = [400, 403, 409, 413, 422, 429, 500, 0];
  const answered = new Map<string, number>();
  await page.route('**/api/entries', async (route) => {
    const id: string = route.request().postDataJSON().id;
    const status = answered.get(id) ?? statuses[answered.size];
    if (status === undefined) return route.continue();
    answered.set(id, status);
    if (status === 0) return route.abort();
    return route.fulfill({
      status,
      contentType: 'application/problem+json',
      headers: { 'retry-after': '60' },
      body: JSON.stringify({ kind: 'refused', errors: [{ field: '', text: `Answer ${status}` }] }),
    });
  });
  await openHarvest(page);
  for (const [at] of [...statuses, 'taken'].entries()) {
    if (at > 0) await page.getByRole('button', { name: /^Weigh again from / }).click();
    await weigh(page, 30 + at);
  }
  await page.goto('/unsent');
  await expect(page.locator('.entry-sent')).toHaveCount(1);
  await expect(page.locator('.entries').first().locator('> li')).toHaveCount(statuses.length);
  for (const status of [400, 413, 422]) await expect(page.getByText(`Answer ${status}`)).toBeVisible();
  for (const grams of [30, 37]) await expect(page.getByText(`${grams} g`)).toBeVisible();
  await page.unroute('**/api/entries');
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(page.locator('.entry-sent')).not.toHaveCount(1);
  await context.close();
});

test('a lapsed sign-in keeps entries and sends them after the next one', async ({ browser }) => {
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, corin);
  await openHarvest(page);
  const cookies = await context.cookies();
  await context.clearCookies();
  await weigh(page, 51);
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('Saved');
  await context.addCookies(cookies);
  await page.goto('/unsent');
  await expect(page.locator('.entry-sent', { hasText: '51 g' })).toHaveCount(1, { timeout: 15_000 });
  await context.close();
});

test('signing out with unsent entries stops and says how many; nobody else sends them', async ({
  browser,
}) => {
  test.setTimeout(60_000);
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, corin);
  await context.setOffline(true);
  await openHarvest(page);
  await weigh(page, 61);
  let posted = 0;
  // Before the signal is back, or the entry may be sent at once.
  await context.route('**/api/entries', (route) => {
    posted += 1;
    return route.abort();
  });
  await context.setOffline(false);
  await page.goto('/account');
  await page.getByRole('button', { name: 'Sign out', exact: true }).click();
  await expect(page.getByText('1 entry is on this phone only.')).toBeVisible();
  expect(page.url()).toContain('/account');
  await page.getByRole('button', { name: 'Sign out and leave them here' }).click();
  await page.waitForURL('**/sign-in');
  expect(await kept(page, 'snapshots')).toBe(0);
  expect(await kept(page, 'entries')).toBe(1);
  posted = 0;
  await signInByForm(page, ives);
  await expect(page.getByText('1 entry of somebody else waits on this phone.')).toBeVisible();
  await page.goto('/unsent');
  await expect(page.getByText('Everything is sent.')).toBeVisible();
  expect(posted).toBe(0);
  await context.close();
});

test('signing out without signal says that it needs one, and the phone goes on with its work', async ({
  browser,
}) => {
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, ives);
  await page.goto('/account');
  await loseSignal(context);
  const signOut = page.getByRole('button', { name: 'Sign out', exact: true });
  await signOut.click();
  await expect(page.getByRole('alert').filter({ hasText: 'There is no signal' })).toBeVisible();
  expect(await kept(page, 'snapshots')).toBe(1);
  await findSignal(context);
  await signOut.click();
  await page.waitForURL('**/sign-in');
  expect(await kept(page, 'snapshots')).toBe(0);
  await context.close();
});

test('a form that is sent without signal keeps what was typed and goes through once there is one', async ({
  browser,
}) => {
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, ives);
  await page.goto('/account/tokens/new');
  const name = `Scale ${Date.now()}`;
  const box = page.getByLabel(/^Name of the token/);
  await box.fill(name);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Make the token' }).click();
  await expect(page.locator('.error-summary')).toContainText('No answer came');
  await expect(page.locator('.error-summary')).toBeFocused();
  await expect(box).toHaveValue(name);
  await context.setOffline(false);
  await page.getByRole('button', { name: 'Make the token' }).click();
  await expect(page.locator('.shown-once')).toHaveText(/^pinset_/);
  await context.close();
});

test('a page that the phone does not keep says that it needs a signal, and shows what is kept', async ({
  browser,
}) => {
  const context = await browser.newContext(phone);
  const page = await signedPhone(context, ives);
  await context.setOffline(true);
  await page.goto('/weighings');
  await expect(page.getByText('This page needs a signal.')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Weigh a harvest' })).toBeVisible();
  await context.close();
});
