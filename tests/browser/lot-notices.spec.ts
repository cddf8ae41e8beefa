import { expect, ives, test, wren } from './people';

test('a lot that loses more leads to its trace and to a notice that members mark as read', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(wren);
  await page.goto('/questions/lots');
  await expect(page.locator('.answer-sentence').first()).toContainText('S-PEARL-07 loses more', {
    timeout: 120_000,
  });
  await page.getByRole('link', { name: 'S-PEARL-07', exact: true }).first().click();
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^It went into \d+ batches at \d+ sites\. .+ picked so far\.$/,
  );
  await page.getByRole('link', { name: 'The whole trace, batch by batch and harvest by harvest' }).click();
  await expect(page.getByRole('heading', { name: 'Trace of spawn lot S-PEARL-07' })).toBeVisible({
    timeout: 60_000,
  });
  await expect(page.getByRole('table', { name: 'Harvests, the earliest first' })).toBeVisible();
  await page.getByRole('link', { name: 'S-PEARL-07', exact: true }).first().click();
  await page.getByRole('link', { name: 'Tell the sites about this lot' }).click();
  await expect(page.getByRole('heading', { name: 'Tell the sites about lot S-PEARL-07' })).toBeVisible({
    timeout: 60_000,
  });
  await expect(page.getByRole('checkbox', { name: /^Mill Lane Garden/ })).toBeChecked();
  const words = `Sour bags, seen ${Date.now()}`;
  await page.getByLabel('What happened').fill(words);
  await page.getByLabel('What to do').fill('Keep the rest apart');
  await page.getByRole('button', { name: 'Send the notice' }).click();
  await expect(page.getByText('The notice is sent')).toBeVisible({ timeout: 60_000 });
  const lot = page.url();

  // One press, without script.
  const member = await openAs(ives, { javaScriptEnabled: false });
  await member.goto('/today');
  const line = member.locator('article', { hasText: words });
  await expect(line.getByText('What to do: Keep the rest apart')).toBeVisible();
  await line.getByRole('button', { name: 'I have read it: lot S-PEARL-07' }).click();
  await expect(member.getByText('Marked as read.')).toBeVisible({ timeout: 60_000 });
  await expect(member.locator('article', { hasText: words })).toHaveCount(0);

  await page.goto(lot);
  const told = page.locator('article', { hasText: words });
  await told.locator('summary').click();
  await expect(told.getByRole('row', { name: /^Mill Lane Garden/ })).toContainText('Ives Marrow (');
});

test('a harvest leads back to its batch, spawn, material and treatment', async ({ openAs }) => {
  const page = await openAs(ives);
  await page.goto('/weighings');
  await page.locator('main tbody a[href^="/weighings/"]').first().click();
  await page.getByRole('link', { name: 'Trace: where it came from and where it went' }).click();
  await expect(page.getByRole('heading', { name: 'Where it came from' })).toBeVisible({ timeout: 60_000 });
  await expect(page.locator('.answer-sentence')).toHaveText(/^Picked from: .+\. Spawn: .+\. Material: .+\./);
});

test('the page of material lots, makers and sources says of each whether one stands out', async ({
  openAs,
}) => {
  test.setTimeout(150_000);
  const page = await openAs(wren);
  await page.goto('/questions/origins');
  const sentences = page.locator('.answer-sentence');
  await expect(sentences).toHaveCount(3, { timeout: 120_000 });
  await expect(sentences.nth(0)).toContainText(/material lot/i);
  await expect(sentences.nth(1)).toContainText(/maker of spawn stands out|Spawn of .+ loses more/);
  await expect(sentences.nth(2)).toContainText(/source of material stands out|Material from .+ loses more/);
});
