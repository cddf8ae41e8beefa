import { expect, test, wren } from './people';

test('people of a table are invited, and a link is handed over later', async ({ openAs }) => {
  test.setTimeout(600_000);
  const page = await openAs(wren);
  const main = page.locator('main');
  const answer = page.locator('.answer-sentence');
  const mark = Date.now().toString(36);
  const person = `Moss Ferrant ${mark}`;
  const rows = [
    ['Name', 'E-mail', 'Role', 'Sites'],
    [person, `moss.${mark}@example.org`, 'member', 'Mill Lane Garden, Quarry Farm'],
    ['Wren Castellan', wren, 'coordinator', ''],
  ];
  const file = {
    name: 'people.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(rows.map((row) => row.join(';')).join('\r\n')),
  };
  const bring = async () => {
    await page.goto('/import?kind=people');
    await page.getByLabel('File', { exact: true }).setInputFiles(file);
    await main.getByRole('button', { name: 'Look at it' }).click();
    await main.getByRole('button', { name: 'Check all rows' }).click();
  };
  await bring();
  await expect(answer).toHaveText('1 row is new, 1 is there already, none needs you.', { timeout: 150_000 });
  await main.getByRole('button', { name: 'Add 1 new row' }).click();
  await expect(main.getByText('Nobody was written to')).toBeVisible({ timeout: 150_000 });
  await main.getByRole('link', { name: 'See what was added' }).click();
  await expect(main.getByRole('row', { name: person })).toContainText('No link yet');
  await main.getByRole('link', { name: person }).click();
  await main.getByRole('button', { name: 'Make a new link' }).click();
  const link = await main.getByText(/\/join\/[\w-]+$/).textContent({ timeout: 150_000 });
  const invited = await openAs(undefined);
  await invited.goto(new URL(link ?? '').pathname);
  await expect(invited.getByLabel('Your name')).toHaveValue(person);
  await bring();
  await expect(answer).toHaveText('No row is new, 2 are there already, none needs you.', {
    timeout: 150_000,
  });

  await page.goto('/people/invitations');
  await main.getByRole('link', { name: person }).click();
  await main.getByText('Take the invitation back').first().click();
  await main.getByRole('button', { name: 'Take the invitation back' }).click();
  await expect(main.getByRole('heading', { name: 'Open invitations' })).toBeVisible({ timeout: 150_000 });
  await expect(main.getByText(person)).toHaveCount(0);
  await invited.reload();
  await expect(invited.getByLabel('Your name')).toHaveCount(0);
});
