import { expect, ives, test, wren } from './people';

test('the watch list says in a sentence what stepped out of line, and folds what was answered', async ({
  openAs,
}) => {
  test.setTimeout(150_000);
  const page = await openAs(wren);
  await page.goto('/questions/watch?days=365');
  const sentence = page.locator('.answer-sentence');
  await expect(sentence).toHaveText(/^\d+ things have stepped out of line since .+ and are not answered\.$/);
  // The short bath of the demo, which needs no model.
  const bath = page.locator('.signal', { hasText: 'at Tarn Street Shed was shorter than its window asks' });
  await expect(bath.first()).toBeVisible();
  // Models are fitted first, then the list is whole, whatever they find of the last year.
  await expect(page.getByText('being compared with what was to be expected', { exact: false })).toBeHidden({
    timeout: 90_000,
  });
  const what = ((await bath.first().locator('p').first().textContent()) ?? '').trim();
  const explain = await bath
    .first()
    .getByRole('link', { name: /^Explain/ })
    .getAttribute('href');
  await page.goto(explain ?? '');
  await expect(page.getByRole('heading', { name: 'What is your answer?' })).toBeVisible({ timeout: 30_000 });
  await page.getByRole('radio', { name: /^Explained/ }).check();
  await page.getByLabel(/^What happened/).fill('The burner was too small for the drum');
  await page.getByRole('button', { name: 'Keep the answer' }).click();
  await expect(page.getByText('Your answer is kept.')).toBeVisible({ timeout: 30_000 });
  await page.goto('/questions/watch?days=365');
  await page.getByText(/^Answered \(\d+\)$/).click();
  const answered = page.locator('details .signal', { hasText: what });
  await expect(answered).toContainText('“The burner was too small for the drum”');
});

test('missing records are told with their effect and lead to the form that mends them', async ({
  openAs,
}) => {
  const page = await openAs(wren);
  await page.goto('/questions/records');
  await expect(page.locator('.answer-sentence')).toHaveText(/^\d+ records are missing.* at \d+ sites\.$/);
  await expect(page.locator('main')).toContainText(
    /batches of bags \(\d+\s%\) are left out of the contamination rate because nobody looked at them/,
  );
  await expect(page.locator('main')).toContainText(/it would lie between [\d.]+ and [\d.]+\s%/);
  const site = page.locator('.fault-site', { hasText: /not looked at/ }).first();
  await site.locator('summary').click();
  const unseen = site.locator('section', { hasText: 'Nobody looked on or after the end of the window' });
  await unseen.getByRole('link').first().click();
  await expect(page).toHaveURL(/\/batches\/[0-9a-f-]{36}\/looks\/new$/);
  const member = await openAs(ives);
  await member.goto('/today');
  await member.getByRole('link', { name: 'Records that are missing at your sites' }).click();
  await expect(
    member.getByRole('heading', { name: 'Which records of your sites are missing or implausible?' }),
  ).toBeVisible();
});
