import { buildReport, publishedDays } from './build-report';
import { submit } from './fill';
import { expect, ives, teal, test, wren } from './people';

test('a published report is built by the coordinator and read by the funder, who sees nothing else', async ({
  openAs,
}) => {
  const coordinator = await openAs(wren);
  const title = `Year in the shed ${Date.now()}`;
  const report = await buildReport(coordinator, title, publishedDays.toFunder);
  await expect(coordinator.getByRole('heading', { level: 1 })).toHaveText(title);

  const funder = await openAs(teal);
  await funder.goto(report);
  await expect(funder.getByRole('heading', { level: 1 })).toHaveText('There is nothing to see here');

  await coordinator.getByRole('link', { name: 'Edit the words' }).click();
  await coordinator.locator('[name="words.opening"]').fill('A dry spring, and more straw than ever.');
  await submit(coordinator);
  await coordinator.waitForURL((url) => url.pathname === report);
  await expect(coordinator.getByText('A dry spring, and more straw than ever.')).toBeVisible();

  await coordinator.getByRole('link', { name: 'Publish this report' }).click();
  await expect(coordinator.getByRole('heading', { level: 1 })).toHaveText(`Publish “${title}”?`);
  await expect(coordinator.getByText('Publishing cannot be taken back.')).toBeVisible();
  await funder.goto(report);
  await expect(funder.getByRole('heading', { level: 1 })).toHaveText('There is nothing to see here');
  await coordinator.getByRole('button', { name: 'Publish it for good' }).click();
  await expect(coordinator.getByText('Only coordinators see this report')).toHaveCount(0);
  const total = coordinator
    .getByRole('table', { name: 'Fresh mass by destination' })
    .getByRole('row', { name: 'Total' });
  const printed = (await total.textContent()) ?? '';
  expect(printed).toMatch(/\d/);

  await coordinator.getByRole('link', { name: 'What the records say now' }).click();
  await expect(coordinator.getByRole('heading', { level: 1 })).toHaveText('What changed since this version');
  await coordinator.goto(report);
  await coordinator.getByRole('button', { name: 'Make a new version' }).click();
  await expect(coordinator.getByText('Version 2, not published')).toBeVisible();
  await expect(coordinator.getByText('A dry spring, and more straw than ever.')).toBeVisible();

  await funder.goto('/reports');
  await funder.getByRole('link', { name: title }).click();
  await funder.waitForURL((url) => url.pathname === report);
  await expect(
    funder.getByRole('table', { name: 'Fresh mass by destination' }).getByRole('row', { name: 'Total' }),
  ).toHaveText(printed);
  await expect(funder.getByText('A dry spring, and more straw than ever.')).toBeVisible();

  const closedToFunders = ['/batches', '/comparison', '/weighings', '/sites', '/people', '/reports/new'];
  for (const closed of [...closedToFunders, `${report}/words`, `${report}/changes`]) {
    await funder.goto(closed);
    await funder.waitForURL((url) => url.pathname === '/reports');
  }
  const member = await openAs(ives);
  for (const closed of ['/comparison', '/people', '/settings', '/reports/new']) {
    await member.goto(closed);
    await member.waitForURL((url) => url.pathname === '/today');
  }
});
