import { buildReport } from './build-report';
import { daysAgo, fillDayBoxes, submit } from './fill';
import { expect, test, wren } from './people';

test('a draft is built anew for other days, keeps its words, and says which figures became different', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(wren);
  const first = await buildReport(page, `A shorter year ${Date.now()}`);
  await page.goto(`${first}/words`);
  await page.locator('[name="words.opening"]').fill('A dry autumn.');
  await submit(page);
  await page.waitForURL((url) => url.pathname === first);
  await page.getByRole('link', { name: 'Build it anew, for these days or others' }).click();
  await page.waitForURL(/\/days$/);
  await fillDayBoxes(page, 'from', daysAgo(60));
  await submit(page);
  await page.waitForURL(/\/rebuilt$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What became different');
  await expect(page.locator('.lead')).toHaveText(/^The draft was built anew: \d+ figures are different\./);
  await page.getByRole('link', { name: 'Open the draft' }).click();
  await page.waitForURL(/\/reports\/[0-9a-f-]{36}$/);
  await expect(page.getByText('A dry autumn.')).toBeVisible();
  await expect(page.getByText('Only coordinators see this report until it is published.')).toBeVisible();
  await page.getByRole('button', { name: 'Discard this draft' }).click();
  await page.waitForURL((url) => url.pathname === '/reports');
});
