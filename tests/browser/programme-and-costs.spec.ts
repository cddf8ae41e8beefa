import { expect, test, wren } from './people';

test('a training counts people once, an answer before and after is kept, and consent can be withdrawn', async ({
  openAs,
}) => {
  const page = await openAs(wren);
  const tag = `T${Date.now().toString(36)}`;
  await page.goto('/programme/trainings/new');
  await page.getByLabel('Site that held it').selectOption({ index: 1 });
  await page.getByLabel('Name of the training').fill(`Growing on cardboard ${tag}`);
  await page.getByLabel('Topic').selectOption('growing');
  await page.getByLabel('Number of people').fill('5');
  await page.locator('summary', { hasText: 'Who came, by name' }).click();
  await page.getByLabel('New people').fill(`Alder ${tag}\nBirch ${tag}`);
  await page.getByText('Yes, on the day of the training').click();
  const first = page.locator('summary', { hasText: 'Question 1' });
  const wording = page.locator('[name="questions.0.wording"]');
  if (!(await wording.isVisible())) await first.click();
  await wording.fill(`I can grow ${tag}`);
  await page.locator('[name="questions.0.scaleMost"]').fill('5');
  await page.locator('[name="questions.0.before"]').fill('1 2');
  await page.locator('[name="questions.0.after"]').fill('4 5');
  await page.locator('main form button[type="submit"]').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(`Growing on cardboard ${tag}`);
  await expect(page.locator('main')).toContainText('5 in the room, 2 of them by name');
  await expect(page.getByRole('row', { name: `I can grow ${tag}` })).toContainText('1.5 (n = 2)');
  await page.getByRole('link', { name: `Alder ${tag}` }).click();
  await expect(page.locator('main')).toContainText(/Counted in reports\s*since/);
  await page.getByRole('link', { name: 'Correct' }).click();
  await page.getByLabel('counted in reports').uncheck();
  await page.getByLabel('Reason for the correction').fill('withdrew');
  await page.locator('main form button[type="submit"]').click();
  await expect(page.locator('main')).toContainText(/Counted in reports\s*no/);
});

test('what a kilogram cost is answered with what is missing named', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/questions/costs');
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^A kilogram cost \$\d+\.\d\d by .+ That rests on the \d+ batches with every part written down, of \d+\.$/,
  );
  await expect(page.getByText(/^Most often missing: .+, in \d+ batches\. What to do: /)).toBeVisible();
  await expect(page.getByRole('table', { name: 'Batches that lack a part, by part' })).toBeVisible();
});
