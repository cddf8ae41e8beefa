import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { readers } from './main-pages';
import { expect, ives, test, wren } from './people';

// Two runs of axe over a long table take their time on a busy machine.
test.describe.configure({ timeout: 90_000 });

const widths = [320, 1280];

async function expectNoViolations(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    id,
    help,
    where: nodes.map(({ target }) => target.join(' ')).slice(0, 5),
  }));
  expect(found, page.url()).toEqual([]);
}

/** Content wider than the window makes the reader scroll sideways; only tables and charts may, inside themselves. */
async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const { content, window } = await page.evaluate(() => ({
    content: document.documentElement.scrollWidth,
    window: document.documentElement.clientWidth,
  }));
  expect(content, `${page.url()} at ${window} px`).toBeLessThanOrEqual(window);
}

async function expectSound(page: Page, address: string, language: string): Promise<void> {
  await page.goto(address);
  await expect(page.locator('html')).toHaveAttribute('lang', new RegExp(`^${language}`));
  await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 });
    await expectNoViolations(page);
    await expectNoSidewaysScroll(page);
  }
}

for (const { language, email, pages } of readers) {
  for (const address of pages) {
    test(`${address} in ${language} for ${email} is sound at 320 and 1280 px`, async ({ openAs }) => {
      await expectSound(await openAs(email), address, language);
    });
  }
}

for (const { language, email } of readers) {
  test(`a batch and a weighing in ${language} for ${email} are sound at 320 and 1280 px`, async ({
    openAs,
  }) => {
    const page = await openAs(email);
    for (const list of ['/batches', '/weighings']) {
      await page.goto(list);
      const record = page.locator(`main tbody a[href^="${list}/"]`).first();
      await expectSound(page, (await record.getAttribute('href')) ?? list, language);
    }
  });
}

test('the sign-in page is sound in both languages, with and without an error', async ({
  browser,
  baseURL,
}) => {
  for (const locale of ['en-US', 'es-MX']) {
    const context = await browser.newContext({ locale, ...(baseURL === undefined ? {} : { baseURL }) });
    const page = await context.newPage();
    await expectSound(page, '/sign-in', locale.slice(0, 2));
    await page.locator('main form button[type="submit"]').click();
    await expect(page.locator('.error-summary')).toBeVisible();
    await expectNoViolations(page);
    await context.close();
  }
});

for (const [address, email] of [
  ['/today', ives],
  ['/batches', ives],
  ['/weighings/new', ives],
  ['/comparison', wren],
] as const) {
  test(`${address} is sound in dark colours too`, async ({ openAs }) => {
    await expectSound(await openAs(email, { colorScheme: 'dark' }), address, 'en');
  });
}
