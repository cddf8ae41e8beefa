import { expect, test, wren } from './people';

test('whether treatments do what they say is answered in a sentence that names the short bath', async ({
  openAs,
}) => {
  const page = await openAs(wren);
  await page.goto('/questions/treatments');
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^\d+ of [\d,]+ runs that treated these batches, and whose readings tell, did not hold their window, (all at Tarn Street Shed|at \d+ sites|all at .*Tarn Street Shed.*)\.$/,
    { timeout: 45_000 },
  );
  const losses = page.getByRole('table', { name: 'Losses by how the run stood to its window' });
  await expect(losses.getByRole('rowheader', { name: 'Did not hold its window' })).toBeVisible();
  await expect(losses.getByRole('rowheader', { name: 'Well inside' })).toBeVisible();
  await page.getByText('Latest runs of Tarn Street Shed, hot-water bath').click();
  await page.getByRole('table', { name: 'Latest runs first' }).first().getByRole('link').first().click();
  await page.waitForURL(/\/treatments\/[0-9a-f-]{36}$/);
});

test('a site says which methods it can use, and its page shows them', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/sites');
  await page.getByRole('link', { name: 'Gorse Hill Growers' }).click();
  await page.getByRole('link', { name: 'Which methods this site can use' }).click();
  await page.getByLabel('Cold-water fermentation').check();
  await page.getByLabel('Reason for the correction').fill('a second drum was bought');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL(/\/sites\/[0-9a-f-]{36}$/);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Gorse Hill Growers');
  await expect(page.locator('main dl')).toContainText('Cold-water fermentation');
});
