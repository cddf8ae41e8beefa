import { expect, test, wren } from './people';

test('the questions answer in a sentence first: which method works, how each site does, which lot is bad, where losses come from', async ({
  openAs,
}) => {
  test.setTimeout(150_000);
  const page = await openAs(wren);
  await page.goto('/questions');
  await page.getByRole('link', { name: /Which method works/ }).click();
  // Fitted in a thread of its own, then streamed into the page that is already there.
  await expect(page.locator('main')).toContainText(
    /Cold lime soak loses about \d+\.\d more bags in 100 than hot-water bath, between \d+\.\d/,
    { timeout: 45_000 },
  );
  await expect(page.locator('main')).toContainText(
    /The raw table hid it, because cold lime soak is used mostly at sites that lose less/,
  );
  await page.goto('/questions/sites');
  await expect(page.locator('main')).toContainText(
    /Tarn Street Shed would lose (about [^.]*)?more than a typical site with the same methods/,
    { timeout: 45_000 },
  );
  await expect(page.getByText('this is no ranking', { exact: false })).toBeVisible();
  await page.goto('/questions/lots');
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^\S+ loses more than its sites and methods would anyway: [\d,]+ \w+ were contaminated where about \d+ were to be expected\.$/,
    { timeout: 45_000 },
  );
  await page.goto('/questions/losses');
  const losses = page.locator('.answer-sentence');
  await expect(losses).toHaveText(
    /^Losses differ by the .*: .*\d+\.\d with the site \(\d+\.\d to \d+\.\d\)/,
    { timeout: 60_000 },
  );
  await expect(losses).toContainText(/\d+\.\d with the spawn lot \(\d+\.\d to \d+\.\d\)/);
  await expect(page.getByRole('link', { name: 'S-PEARL-07' }).first()).toBeVisible();
});
