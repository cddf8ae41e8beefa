import type { Page } from '@playwright/test';
import { daysAgo, fillMass, submit } from './fill';
import { expect, odell, test, wren } from './people';

/** Weighs 1.25 kg from an old batch of the person's site; answers the address of the correction. */
async function weighed(page: Page): Promise<string> {
  await page.goto(`/batches?state=open&container=bag&to=${daysAgo(40)}`);
  await page.locator('main tbody a[href^="/batches/"]').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Batch /);
  await page.goto(`/weighings/new?batch=${new URL(page.url()).pathname.split('/').at(-1)}`);
  await fillMass(page, 'fresh', '1.25');
  await submit(page);
  await page.waitForURL(/\/weighings\/[0-9a-f-]{36}/);
  return `${new URL(page.url()).pathname}/correct`;
}

async function correct(page: Page, grade: string): Promise<void> {
  const box = page.locator('[name="grade"]');
  if (!(await box.isVisible())) await page.locator('details:has([name="grade"]) > summary').click();
  await box.fill(grade);
  await page.locator('[name="reason"]').fill('Seen again');
  await submit(page);
}

for (const script of [true, false]) {
  test(`two people correct one weighing ${script ? 'with' : 'without'} script: the second sees both versions and chooses`, async ({
    openAs,
  }) => {
    const member = await openAs(odell, { javaScriptEnabled: script });
    const address = await weighed(member);
    await member.goto(address);
    const coordinator = await openAs(wren);
    await coordinator.goto(address);
    await correct(coordinator, 'first');
    await coordinator.waitForURL((url) => url.pathname === address.replace('/correct', ''));

    await correct(member, 'second');
    const panel = member.locator('.conflict-panel');
    await expect(panel).toContainText('Wren');
    await expect(panel.locator('tbody tr')).toHaveCount(1);
    await expect(panel.locator('tbody tr')).toContainText('first');
    await expect(panel.locator('tbody tr')).toContainText('second');
    await expect(member.locator('[name="grade"]')).toHaveValue('second');

    await test.step('the first stands until the second says otherwise', async () => {
      await panel.getByRole('link', { name: 'Keep what is saved' }).click();
      await expect(member.locator('[name="grade"]')).toHaveValue('first');
    });

    await test.step('saving over it keeps the first in the history', async () => {
      await coordinator.goto(address);
      await correct(coordinator, 'third');
      await coordinator.waitForURL((url) => url.pathname === address.replace('/correct', ''));
      await correct(member, 'fourth');
      await expect(panel).toContainText('third');
      await member.getByRole('button', { name: 'Save mine over it' }).click();
      await member.waitForURL((url) => url.pathname === address.replace('/correct', ''));
      await expect(member.locator('main')).toContainText('fourth');
      const record = address.split('/').at(-2);
      await member.goto(`/history/${record}`);
      for (const grade of ['first', 'third', 'fourth'])
        await expect(member.locator('main')).toContainText(grade);
      await expect(member.locator('main')).not.toContainText('second');
    });
  });
}
