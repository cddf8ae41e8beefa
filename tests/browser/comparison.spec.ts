import type { Page } from '@playwright/test';
import { daysAgo, fillDayBoxes } from './fill';
import { expect, test, wren } from './people';

/** The number of batches that a figure says it rests on. */
async function batchesBehind(page: Page): Promise<number> {
  const text = (await page.locator('.figures').textContent()) ?? '';
  return Number(/([\d,]+) batches/.exec(text)?.[1]?.replace(',', ''));
}

test('the comparison is narrowed in its address and opens the batches behind a figure', async ({
  openAs,
}) => {
  test.slow();
  const page = await openAs(wren);
  await page.goto('/comparison');
  const all = await batchesBehind(page);
  expect(all).toBeGreaterThan(100);

  await page.locator('main details').first().locator('summary').click();
  await fillDayBoxes(page, 'from', daysAgo(400));
  await fillDayBoxes(page, 'to', daysAgo(300));
  await page.getByRole('button', { name: 'Show these' }).click();
  await page.waitForURL((url) => url.searchParams.get('from__year') === daysAgo(400).slice(0, 4));
  const narrowed = await batchesBehind(page);
  expect(narrowed).toBeGreaterThan(0);
  expect(narrowed).toBeLessThan(all);

  // The address alone brings the same page back.
  await page.goto(page.url());
  expect(await batchesBehind(page)).toBe(narrowed);

  await page.locator('.figures summary').first().click();
  await page.locator('.figures a[href^="/comparison/rows"]').first().click();
  await page.waitForURL(/\/comparison\/rows/);
  const rows = page.getByRole('table').locator('tbody tr');
  expect(await rows.count()).toBeGreaterThanOrEqual(Math.min(narrowed, 20));
  await rows.first().getByRole('link').first().click();
  await page.waitForURL(/\/batches\/[0-9a-f-]{36}/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Batch /);
});

test('the questions that the comparison leads to are asked of the same batches', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/comparison?container=bag&from=2025-03-01&to=2026-02-28');
  const scope = await page.locator('p.lead').textContent();
  for (const question of ['methods', 'sites']) {
    const links = page.locator(`main a[href^="/questions/${question}"]`);
    for (const link of await links.all()) {
      const asked = await openAs(wren);
      await asked.goto((await link.getAttribute('href')) ?? '');
      await expect(asked.locator('p.lead')).toHaveText(scope ?? '');
    }
    expect(await links.count()).toBeGreaterThan(0);
  }
});

test('what each method does at each site stands on a page of its own, of the same batches', async ({
  openAs,
}) => {
  const page = await openAs(wren);
  await page.goto('/comparison?container=bag&material=all&from=2020-01-01');
  const scope = await page.locator('p.lead').textContent();
  const sites = page.getByRole('table', { name: 'By site, all methods' }).locator('tbody tr');
  const count = await sites.count();
  await page.getByRole('link', { name: 'Each method at each site' }).click();
  await page.waitForURL(/\/comparison\/methods-at-sites/);
  await expect(page.locator('p.lead')).toHaveText(scope ?? '');
  const cells = page.getByRole('table', { name: 'Method by site' }).locator('tbody tr:not(.group-row)');
  expect(await cells.count()).toBeGreaterThan(count);
  await page.getByRole('link', { name: 'Back to the comparison' }).click();
  await page.waitForURL(/\/comparison\?/);
  await expect(page.locator('p.lead')).toHaveText(scope ?? '');
});

for (const javaScriptEnabled of [true, false])
  test(`a date that does not exist is named at its field, and the page says of which days its figures are, ${javaScriptEnabled ? 'with' : 'without'} script`, async ({
    openAs,
  }) => {
    const page = await openAs(wren, { javaScriptEnabled });
    for (const path of ['/comparison', '/questions/methods', '/questions/costs']) {
      await page.goto(`${path}?from__day=31&from__month=Feb&from__year=2026&to=${daysAgo(100)}`);
      const summary = page.locator('.error-summary');
      await expect(summary.getByRole('link')).toHaveText(/as a real date, such as/);
      await expect(summary.getByRole('link')).toHaveAttribute('href', '#field-from');
      await expect(page.locator('#field-from-error')).toBeVisible();
      await expect(page.locator('[name="from__day"]')).toHaveValue('31');
      await expect(page.locator('[name="from__month"]')).toHaveValue('Feb');
      await expect(page.locator('main')).toContainText(
        /the figures below are of batches inoculated from .+ to .+\./,
      );
    }
    await page.goto('/comparison/rows?from=2026-02-31');
    await expect(page.locator('.notice')).toContainText('as a real date');
    await page.goto('/comparison/methods-at-sites?from=2026-02-31');
    await expect(page.locator('.notice')).toContainText('as a real date');
    await page.goto('/comparison?from=2026-05-02&to=2026-05-01');
    await expect(page.locator('#field-to-error')).toContainText(/as 2\sMay\s2026 or a later day/);
  });

test('an address with unreadable filters still opens', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/comparison?from=yesterday&species=%00&container=barrel&material[]=x');
  expect(await batchesBehind(page)).toBeGreaterThan(100);
});
