import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, ives, type OpenAs, posy, test } from './people';

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const recordAddress = /\/[0-9a-f-]{36}$/;

async function expectSound(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target.join(' '))])).toEqual([]);
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over).toBeLessThanOrEqual(0);
}

/** Every line of the page, open or folded, with where it leads. */
async function lines(page: Page): Promise<{ text: string; href: string }[]> {
  return page
    .locator('.due-next a, .due-lines a')
    .evaluateAll((links) =>
      links.map((link) => ({ text: link.textContent ?? '', href: link.getAttribute('href') ?? '' })),
    );
}

test('Today says first what a clock is running for, and each line leads to the one form it needs', async ({
  openAs,
}) => {
  const page = await openAs(ives, phone);
  await page.goto('/today');
  const found = await lines(page);
  expect(found.length).toBeGreaterThan(2);
  expect(
    found.map(({ href }) => href).filter((href) => !/^\/(treatments|quick|batches)\//.test(href)),
  ).toEqual([]);
  // The demo's bath holds its heat and its lime soak comes out within the hour.
  const now = page.getByRole('region', { name: 'Now' }).or(page.locator('.due-next'));
  await expect(now.first()).toContainText(/of 60 min|Read|out/);
  const kinds = ['/treatments/', '/quick/', '/batches/'];
  for (const kind of kinds) {
    const line = found.find(({ href }) => href.startsWith(kind));
    if (line === undefined) continue;
    await page.goto(line.href);
    await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
    await expect(page.locator('main form').first()).toBeVisible();
  }
});

test('Today stays short: most of it is folded, and nothing is lost in the folds', async ({ openAs }) => {
  const page = await openAs(ives, phone);
  await page.goto('/today');
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  expect(height).toBeLessThan(740 * 5);
  for (const fold of await page.locator('.due-fold > summary').all()) await fold.click();
  for (const link of await page.locator('.due-lines a').all()) await expect(link).toBeVisible();
});

/** The page of the first running treatment of the demo whose method is named so. */
async function openRun(openAs: OpenAs, name: RegExp, script = true): Promise<Page> {
  const page = await openAs(ives, { ...phone, javaScriptEnabled: script });
  await page.goto('/treatments?state=running');
  const row = page.locator('main tr', { hasText: name }).first();
  await row.locator('a').first().click();
  await page.waitForURL(recordAddress);
  return page;
}

for (const script of [true, false])
  test(`a reading of a running bath is digits and one tap ${script ? 'with' : 'without'} script, and is in the table at once`, async ({
    openAs,
  }) => {
    const page = await openRun(openAs, /Hot-water bath/, script);
    await expect(page.locator('.run-clock')).toHaveText(/min/);
    const box = page.locator('[name="celsius"]');
    const typed = script ? '70.3' : '70.4';
    await box.fill(typed);
    await page.getByRole('button', { name: 'Save this reading' }).click();
    await expect(page.getByRole('cell', { name: new RegExp(`^${typed}`) })).toBeVisible();
    await expect(page.locator('figure.chart')).toContainText(/last reading was 70\.[34]/);
    await expect(page.locator('svg.course .course-window')).toHaveCount(1);
  });

test('an empty reading says what is missing, on the page of its treatment', async ({ openAs }) => {
  const page = await openRun(openAs, /Hot-water bath/);
  await page.getByRole('button', { name: 'Save this reading' }).click();
  await expect(page.locator('.error-summary')).toBeFocused();
});

test('a run that fell below its window says so, with what it did to the count', async ({ openAs }) => {
  const page = await openAs(posy);
  await page.goto('/treatments?state=ended');
  await page.locator('main tbody a[href^="/treatments/"]').first().click();
  await page.waitForURL(recordAddress);
  await expect(page.locator('main')).toContainText(/it fell below .* does not count on/);
  await expectSound(page);
  await page.getByRole('link', { name: 'Trace: where it came from and where it went' }).click();
  await expect(page.getByRole('heading', { level: 1, name: /^Trace of treatment / })).toBeVisible();
});

test("a logger's table is looked at, taken in once, and shown beside the batches of its place", async ({
  openAs,
}) => {
  const page = await openAs(ives, phone);
  // A name of its own for each try: a place keeps its name at its site.
  const shelf = `Shelf ${Date.now() % 1_000_000}`;
  await page.goto('/sites');
  await page.locator('main a[href^="/sites/"]').first().click();
  await page.getByRole('link', { name: 'Name a place' }).click();
  await page.locator('[name="name"]').fill(shelf);
  await page.locator('.form-end button').click();
  await page.waitForURL(recordAddress);
  const place = page.url();
  const table = [
    'Fecha;Hora;Temperatura (°C);Humedad %',
    ...[1, 2, 3].map((day) => `2${day}/10/2026;08:00;18,${day};9${day}`),
  ].join('\n');
  for (const added of ['6 were new', 'none was new']) {
    await page.goto(`${place}/import`);
    await page.locator('[name="text"]').fill(table);
    await page.getByRole('button', { name: 'Look at it' }).click();
    await expect(page.locator('main')).toContainText('6 readings');
    await expect(page.locator('[name="dateOrder"]')).toHaveValue('dmy');
    await expect(page.locator('[name="decimal"]')).toHaveValue('comma');
    await expectSound(page);
    await page.getByRole('button', { name: 'Take these readings in' }).click();
    await expect(page.locator('.notice')).toContainText(added);
  }
  await page.goto(`${place}/import`);
  await page.locator('[name="text"]').fill(table.replace('18,2', 'warm'));
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect(page.locator('main')).toContainText('Line 3: “warm” is no number.');
  await expect(page.getByRole('button', { name: 'Take these readings in' })).toHaveCount(0);
  await page.goto('/batches?state=open');
  const batch = await page.locator('main tbody a[href^="/batches/"]').first().getAttribute('href');
  await page.goto(`${batch}/place`);
  await page.getByLabel(shelf).check();
  await page.locator('.form-end button').click();
  await page.waitForURL(recordAddress);
  await expect(page.getByRole('heading', { name: 'Where it stands' })).toBeVisible();
  await page.getByRole('link', { name: shelf, exact: true }).click();
  await expect(page.locator('main')).toContainText(/Batches that stand here \(1\)/);
  await expectSound(page);
});
