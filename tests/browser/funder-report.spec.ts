import { expect, ives, teal, test, wren } from './people';

test('a published report is built by the coordinator and read by the funder, who sees nothing else', async ({
  openAs,
}) => {
  const coordinator = await openAs(wren);
  const title = `Year in the shed ${Date.now()}`;
  await coordinator.goto('/reports/new');
  await coordinator.locator('[name="title"]').fill(title);
  await coordinator.locator('main form button[type="submit"]').click();
  await coordinator.waitForURL(/\/reports\/[0-9a-f-]{36}/);
  const report = new URL(coordinator.url()).pathname;
  await expect(coordinator.getByRole('heading', { level: 1 })).toHaveText(title);

  const funder = await openAs(teal);
  await funder.goto(report);
  await expect(funder.getByRole('heading', { level: 1 })).toHaveText('There is nothing to see here');

  await coordinator.getByRole('button', { name: 'Publish this report' }).click();
  await expect(coordinator.getByText('Only coordinators see this report')).toHaveCount(0);
  const total = coordinator
    .getByRole('table', { name: 'Fresh mass by destination' })
    .getByRole('row', { name: 'Total' });
  const printed = (await total.textContent()) ?? '';
  expect(printed).toMatch(/\d/);

  await funder.goto('/reports');
  await funder.getByRole('link', { name: title }).click();
  await funder.waitForURL((url) => url.pathname === report);
  await expect(
    funder.getByRole('table', { name: 'Fresh mass by destination' }).getByRole('row', { name: 'Total' }),
  ).toHaveText(printed);

  for (const closed of ['/batches', '/comparison', '/weighings', '/sites', '/people', '/reports/new']) {
    await funder.goto(closed);
    await funder.waitForURL((url) => url.pathname === '/reports');
  }
  const member = await openAs(ives);
  for (const closed of ['/comparison', '/people', '/settings', '/reports/new']) {
    await member.goto(closed);
    await member.waitForURL((url) => url.pathname === '/today');
  }
});
