import type { Page } from '@playwright/test';
import { choose, daysAgo, fillDay, fillMass, submit } from './fill';
import { expect, ives, juniper, teal, test, wren } from './people';

// 29.33 kg at 70 % moisture (wet basis) are 8.799 kg dry; 5.60 kg fresh on it are a biological efficiency of 63.6 %.
const filledKg = '29.33';
const moisturePercent = '70';
const flushes = [
  { kg: '2.75', daysAgo: 36, shown: /flush 1: 2\.75\skg \(49\s%\)/ },
  { kg: '1.9', daysAgo: 24, shown: /flush 2: 1\.9\skg \(34\s%\)/ },
  { kg: '0.95', daysAgo: 12, shown: /flush 3: 950\sg \(17\s%\)/ },
];
const inoculatedOn = daysAgo(65);

async function startBatch(page: Page): Promise<string> {
  await page.goto('/batches/new?container=bag');
  await choose(page, 'siteId', /^Mill Lane/);
  await choose(page, 'speciesId', /^Oyster mushroom/);
  await fillDay(page, 'inoculatedOn', inoculatedOn);
  // Not the latest lot: the straw has to have come before the bags were filled.
  await choose(page, 'components.0.lotId', /^Wheat straw/, 1);
  await choose(page, 'components.0.treatment', /^Hot-water.*run not recorded/);
  await page.locator('[name="unitCount"]').fill('20');
  await fillMass(page, 'filledMass', filledKg);
  await page.locator('[name="moistureSource"][value="measured"]').check();
  await page.locator('[name="moisturePercent"]').fill(moisturePercent);
  await choose(page, 'spawn.0.lotId', /^Oyster mushroom/);
  await submit(page);
  await page.waitForURL(/\/batches\/[0-9a-f-]{36}/);
  return new URL(page.url()).pathname;
}

async function reportTwoContaminated(page: Page, batch: string): Promise<void> {
  await page.goto(batch);
  await page.getByRole('link', { name: 'I found contamination' }).click();
  await page.waitForURL(/findings\/new/);
  await fillDay(page, 'foundOn', daysAgo(50));
  await page.locator('[name="units"]').fill('2');
  await page.locator('[name="sign"]').first().check();
  await page.locator('[name="stage"][value="colonising"]').check();
  await page.locator('[name="action"][value="discarded"]').check();
  await submit(page);
  await page.waitForURL((url) => url.pathname === batch);
}

async function weigh(page: Page, batch: string, kilograms: string, on: string): Promise<void> {
  await page.goto(`/weighings/new?batch=${batch.split('/').at(-1)}`);
  await fillMass(page, 'fresh', kilograms);
  await fillDay(page, 'weighedOn', on);
  await page.locator('main details').first().locator('summary').click();
  await fillMass(page, 'sold', kilograms);
  await submit(page);
  await page.waitForURL(/\/weighings\/[0-9a-f-]{36}/);
}

test('follows one bag from the member who fills it to the funder who sees the total', async ({ openAs }) => {
  test.slow();
  const member = await openAs(ives);
  const batch = await startBatch(member);
  await reportTwoContaminated(member, batch);
  for (const flush of flushes) await weigh(member, batch, flush.kg, daysAgo(flush.daysAgo));

  await member.goto(batch);
  await member.getByRole('button', { name: 'Looked at all: none contaminated' }).click();
  await member.waitForURL(/saved=look/);
  await member.getByText('Something else happened').click();
  await member.getByRole('link', { name: 'Close this batch' }).click();
  await member.waitForURL(/\/close/);
  await member.locator('[name="closedOn__quick"]').first().check();
  await member.locator('[name="closeReason"]').first().check();
  await member.locator('[name="spentDestination"]').first().check();
  await submit(member);
  await member.waitForURL((url) => url.pathname === batch);

  await test.step('the coordinator sees its exact figures', async () => {
    const coordinator = await openAs(wren);
    await coordinator.goto(batch);
    const figure = (label: string) => coordinator.locator('.figure').filter({ hasText: label });
    await expect(figure('Contaminated').locator('.figure-estimate')).toHaveText('2 of 20');
    // Wilson interval of 2 in 20: 2.79 to 30.10 % (Brown, Cai & DasGupta 2001, doi 10.1214/ss/1009213286).
    await expect(figure('Contaminated')).toContainText(/10\.0\s%, 95 % interval 2\.8\s% to 30\.1\s%/);
    await expect(figure('Fresh mushrooms').locator('.figure-estimate')).toHaveText(/^5\.6\skg$/);
    for (const { shown } of flushes) await expect(figure('Fresh mushrooms')).toContainText(shown);
    await expect(figure('Biological efficiency').locator('.figure-estimate')).toHaveText(/^63\.6\s?%$/);
    await expect(figure('Biological efficiency')).toContainText(/5\.6\skg fresh over 8\.799\skg dry/);
    await expect(coordinator.locator('main')).not.toContainText('assumed');
  });

  await test.step('the other network has nothing to see at its address', async () => {
    const outsider = await openAs(juniper);
    await outsider.goto(batch);
    await expect(outsider.getByRole('heading', { level: 1 })).toHaveText('There is nothing to see here');
    for (const secret of ['Mill Lane', '5.6', '63.6', 'Wheat straw', 'Oyster mushroom'])
      expect(await outsider.content()).not.toContain(secret);
  });

  await test.step('the funder cannot open it either', async () => {
    const funder = await openAs(teal);
    await funder.goto(batch);
    await funder.waitForURL((url) => url.pathname === '/reports');
    expect(await funder.content()).not.toContain('63.6');
  });
});
