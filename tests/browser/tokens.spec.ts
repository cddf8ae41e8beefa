import { expect, test, wren } from './people';

test('a token made on the page reads and writes for a script until it is withdrawn', async ({
  openAs,
  request,
}) => {
  test.setTimeout(180_000);
  const page = await openAs(wren);
  const name = `Script ${Date.now()}`;
  await page.goto('/account/tokens/new');
  await page.getByLabel(/^Name of the token/).fill(name);
  await page.getByRole('radio', { name: /^Read and write/ }).check();
  await page.getByRole('button', { name: 'Make the token' }).click();
  const notice = page.getByText(/pinset_[\w-]{43}/);
  await expect(notice).toBeVisible({ timeout: 30_000 });
  const token = /pinset_[\w-]{43}/.exec((await notice.textContent()) ?? '')?.[0] ?? '';
  const ask = (address: string) =>
    request.get(`/api/v1${address}`, { headers: { authorization: `Bearer ${token}` } });
  const answer = await ask('/sites?limit=100');
  expect(answer.status()).toBe(200);
  const { items } = await answer.json();
  expect(items).toContainEqual(expect.objectContaining({ name: 'Mill Lane Garden' }));
  const site = items.find((one: { name: string }) => one.name === 'Mill Lane Garden');
  const made = await request.post('/api/v1/places', {
    headers: { authorization: `Bearer ${token}`, 'idempotency-key': crypto.randomUUID() },
    data: { siteId: site.id, name },
  });
  expect(made.status()).toBe(201);
  await page.goto(`/sites/${site.id}/places/${(await made.json()).id}`);
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible({ timeout: 30_000 });

  await page.goto('/account/tokens');
  await page.getByRole('link', { name: `Withdraw ${name}` }).click();
  await page.getByLabel(/^Reason/).fill('The script has done its work');
  await page.getByRole('button', { name: 'Withdraw the token' }).click();
  await expect(page.getByText('The token was withdrawn.')).toBeVisible({ timeout: 30_000 });
  const refused = await ask('/sites');
  expect(refused.status()).toBe(401);
  expect(refused.headers()['content-type']).toContain('application/problem+json');
});

test('the page about the API tells what an operation takes in words of the forms', async ({ openAs }) => {
  const page = await openAs(wren);
  await page.goto('/help/api');
  await page.getByText('Record POST /weighings').click();
  await expect(page.getByRole('row', { name: /freshGrams/ }).first()).toBeVisible();
});
