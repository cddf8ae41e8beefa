import { demoPassword } from '@/seed/story/people';
import { submit } from './fill';
import { uuid } from './find-address';
import { expect, odell, test, wren } from './people';

test('a site says what it shares, and the coordinator reads it without being able to change it', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(odell);
  await page.goto('/sites');
  await page.locator('main tbody a[href^="/sites/"]').first().click();
  await page.getByRole('link', { name: 'What this site shares with others' }).click();
  await page.waitForURL(new RegExp(`/sites/${uuid}/sharing`));
  const address = page.url();
  // Another worker may say something at the same moment, and the older form is then a conflict.
  await expect(async () => {
    await page.goto(address);
    await page.locator('[name="withMembers"][value="named"]').check();
    await page.locator('[name="withFunder"][value="not_at_all"]').check();
    await submit(page);
    await expect(page.getByText('Saved. It holds from now on.')).toBeVisible({ timeout: 60_000 });
  }).toPass({ intervals: [1000, 2000, 4000] });

  const coordinator = await openAs(wren);
  await coordinator.goto(address);
  await expect(coordinator.getByText(/^Only the site decides this/)).toBeVisible();
  await expect(coordinator.getByText(/^Not at all\. Left out of the sites of a report/)).toBeVisible();
  await expect(coordinator.locator('main form')).toHaveCount(0);
  await coordinator.getByRole('link', { name: 'History' }).click();
  await expect(coordinator.getByText('Shown to the funder').first()).toBeVisible();
});

test('a person takes their records along and leaves, without script, and nobody finds their name', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const name = `Marl Passing ${Date.now()}`;
  const email = `${name.replaceAll(' ', '-').toLowerCase()}@larkmoor.example`;
  const coordinator = await openAs(wren);
  await coordinator.goto('/people/invite');
  await coordinator.locator('[name="role"][value="member"]').check();
  await coordinator.locator('[name="siteIds"]').first().check();
  await submit(coordinator);
  const link = /\/join\/[\w-]+/.exec(
    (await coordinator
      .getByText(/\/join\/[\w-]+/)
      .first()
      .textContent()) ?? '',
  );

  const page = await openAs(undefined, { javaScriptEnabled: false });
  await page.goto(link?.[0] ?? '');
  await page.locator('[name="name"]').fill(name);
  await page.locator('[name="email"]').fill(email);
  await page.locator('[name="password"]').fill(demoPassword);
  await submit(page);
  await page.waitForURL((url) => !url.pathname.startsWith('/join'));
  await page.goto('/account/leave');
  await expect(page.getByText('There are no records of this person.')).toBeVisible();
  const archive = await page.request.get('/account/leave/archive');
  expect(archive.headers()['content-type']).toBe('application/zip');
  await submit(page);
  await expect(page.locator('.error-summary')).toBeVisible();
  await page.locator('[name="word"]').fill('leave');
  await submit(page);
  await expect(page.getByRole('heading', { name: 'You have left' })).toBeVisible();

  await coordinator.goto('/people');
  await expect(coordinator.getByText('A former member').first()).toBeVisible();
  await expect(coordinator.getByText(name)).toHaveCount(0);
  await page.goto('/sign-in');
  await page.locator('[name="email"]').fill(email);
  await page.locator('[name="password"]').fill(demoPassword);
  await submit(page);
  await expect(page.locator('.error-summary')).toBeVisible();
});
