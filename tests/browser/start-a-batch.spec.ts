import type { Locator, Page } from '@playwright/test';
import { choose, submit } from './fill';
import { expect, odell, test } from './people';

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const mostTaps = 6;
const bags = 24;

/** Counts what a thumb does; digits are typed without a tap of their own. */
function thumb() {
  let taps = 0;
  return {
    taps: () => taps,
    tap: async (what: Locator) => {
      taps += 1;
      await what.tap();
    },
  };
}

/** The number in a box, whatever its decimal sign. */
async function numberIn(box: Locator): Promise<number> {
  return Number((await box.inputValue()).replace(',', '.'));
}

/** Replaces what a box holds by digits, as a person does who has tapped into it. */
async function type(page: Page, box: Locator, digits: string): Promise<void> {
  await box.press('ControlOrMeta+a');
  await page.keyboard.type(digits);
}

test('starts 24 bags from a repeated batch in at most six taps and the digits', async ({ openAs }) => {
  const page = await openAs(odell, phone);
  await page.goto('/today');
  const { tap, taps } = thumb();
  const began = Date.now();

  await tap(page.getByRole('link', { name: /^(Repeat the last batch|Repetir el último lote)$/ }));
  await page.waitForURL(/repeat=last/);
  const units = page.locator('[name="unitCount"]');
  const mass = page.locator('[name="filledMass"]');
  const each = (await numberIn(mass)) / (await numberIn(units));
  await tap(units);
  await type(page, units, String(bags));
  await tap(mass);
  await type(page, mass, String(Math.round(each * bags)));
  await tap(page.locator('.form-end button.button-action'));
  await page.waitForURL(/\/batches\/[0-9a-f-]{36}\?saved=yes/);

  const seconds = (Date.now() - began) / 1000;
  test.info().annotations.push({ type: 'figure', description: `${taps()} taps, ${seconds.toFixed(1)} s` });
  expect(taps()).toBeLessThanOrEqual(mostTaps);
  await expect(page.locator('.notice')).toBeVisible();
  await expect(page.locator('main')).toContainText(/24 (bags|bolsas)/);
  await expect(page.locator('main')).toContainText(/Assumed|Supuesta/i);
});

test('shows the sums while a batch is typed, and warns of what does not suit before it is saved', async ({
  openAs,
}) => {
  const page = await openAs(odell);
  await page.goto('/batches/new?container=bag');
  await choose(page, 'siteId', /./, 1);
  await choose(page, 'speciesId', /\(Lentinula edodes\)/);
  await choose(
    page,
    'components.0.treatment',
    /lime soak, run not recorded|agua de cal, tratamiento no registrado/,
  );
  await choose(page, 'components.0.lotId', /^(Wheat straw|Paja de trigo)/);
  const sums = page.locator('.sums');
  await expect(sums.first()).toContainText(/only for oysters|solo para setas ostra/);
  await page.locator('[name="unitCount"]').fill('20');
  await page.locator('[name="filledMass"]').fill('29.33 kg');
  // 72 % is what straw holds after a lime soak, by common practice: 29.33 kg x 0.28.
  await expect(sums.last()).toContainText(/8[.,]212\skg/);
  await submit(page);
  await expect(page.locator('.question-panel')).toContainText(/only for oysters|solo para setas ostra/);
});

test('without script the sums of a form are worked out and nothing is saved', async ({ openAs }) => {
  const page = await openAs(odell, { javaScriptEnabled: false });
  await page.goto('/treatments/new?methodKind=cold_lime_soak');
  await page.locator('[name="water"]').fill('50 L');
  await page.locator('[name="lime"]').fill('250 g');
  await page.locator('button[name="workOut"]').click();
  await expect(page.locator('.sums')).toContainText(/3[.,]35\sg\/L/);
  await expect(page.locator('[name="lime"]')).toHaveValue('250 g');
  expect(new URL(page.url()).pathname).toBe('/treatments/new');
});

test('the page of sums carries its answer into the form of a treatment', async ({ openAs }) => {
  const page = await openAs(odell);
  await page.goto('/sums?what=lime');
  await page.locator('[name="water"]').fill('50 L');
  await page.locator('.sums a.button').click();
  await page.waitForURL(/\/treatments\/new\?/);
  await expect(page.locator('[name="lime"]')).toHaveValue('250');
  await expect(page.locator('[name="lime__unit"]')).toHaveValue('g');
  await expect(page.locator('[name="water"]')).toHaveValue('50');
  await expect(page.locator('[name="loadCelsiusAtSpawning"]')).toHaveCount(0);
});
