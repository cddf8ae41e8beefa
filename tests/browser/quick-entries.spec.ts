import type { Locator, Page } from '@playwright/test';
import { corin, expect, type OpenAs, rocio, test } from './people';

/** A small phone, held in one hand: everything is done by taps and typed digits. */
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

class Hand {
  taps = 0;
  constructor(readonly page: Page) {}

  async tap(target: Locator): Promise<void> {
    await target.tap();
    this.taps += 1;
  }

  /** Types where the focus is, as a person does who was not asked to tap the box first. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text);
  }
}

async function openPhone(openAs: OpenAs, address: string, email = corin): Promise<Hand> {
  const page = await openAs(email, phone);
  await page.goto(address);
  await expect(page.locator('form.quick-form')).toBeVisible();
  return new Hand(page);
}

const save = (page: Page) => page.locator('form.quick-form button[type="submit"]');
const next = (page: Page, words: RegExp) =>
  page.getByRole('button', { name: words }).or(page.getByRole('link', { name: words }));
const mass = (page: Page) => page.locator('[name="fresh"]');

/** Kept on the phone at once, which is all a person waits for. */
async function expectSaved(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^(Saved|Kept on this phone, will be sent)$/,
  );
}

/** With the server, too: only then other pages show it. */
async function expectSent(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Saved', { timeout: 15_000 });
}

test('a harvest takes at most 6 taps and 20 seconds, the next of the same batch 3 taps', async ({
  openAs,
}) => {
  const started = Date.now();
  const hand = await openPhone(openAs, '/quick/harvest');
  const { page } = hand;
  await hand.tap(page.locator('.tile').first());
  await expect(mass(page)).toBeFocused();
  await hand.type('0.41');
  await expect(page.locator('.echo')).toHaveText(/^410\sg, that is 14\.5\soz$/);
  await hand.tap(save(page));
  await expectSaved(page);
  expect(hand.taps).toBeLessThanOrEqual(6);
  expect(Date.now() - started).toBeLessThan(20_000);

  hand.taps = 0;
  await hand.tap(next(page, /^Weigh again from /));
  await expect(mass(page)).toBeFocused();
  await hand.type('0.42');
  await hand.tap(save(page));
  await expectSaved(page);
  expect(hand.taps).toBeLessThanOrEqual(3);

  await expectSent(page);
  await page.getByRole('link', { name: /^See batch / }).tap();
  await expect(page.locator('main')).toContainText(/410\sg/);
  await expect(page.locator('main')).toContainText(/420\sg/);
});

test('a mass with two readings is a choice of two buttons, and a crate is subtracted and kept', async ({
  openAs,
}) => {
  const hand = await openPhone(openAs, '/quick/harvest');
  const { page } = hand;
  await hand.tap(page.locator('.tile').nth(1));
  await hand.type('1,250');
  await hand.tap(page.getByRole('button', { name: /^1\.25\skg$/ }));
  await expect(page.locator('.echo')).toHaveText(/^1\.25\skg, that is 2\slb\s12\soz$/);
  await hand.tap(page.getByText('In a crate or bucket? Subtract it'));
  await hand.tap(page.locator('[name="tare"]'));
  await hand.type('120 g');
  await expect(page.locator('.echo')).toHaveText(
    /^1\.25\skg − 120\sg crate = 1\.13\skg, that is 2\slb\s8\soz$/,
  );
  await hand.tap(save(page));
  await expectSaved(page);
  await hand.tap(next(page, /^Weigh again from /));
  await expect(page.locator('form.quick-form')).toBeVisible();
});

test('a scale that types digits, unit and Enter, even twice, saves one harvest', async ({ openAs }) => {
  const hand = await openPhone(openAs, '/quick/harvest');
  const { page } = hand;
  await hand.tap(page.locator('.tile').nth(2));
  const code = /[A-Z]{3}-\d+/.exec((await page.getByRole('heading', { level: 1 }).textContent()) ?? '')?.[0];
  const grams = 300 + (Math.floor(Date.now() / 1000) % 400);
  await hand.type(`+0000.${grams} kg`);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expectSent(page);
  await page.getByRole('link', { name: `See batch ${code}` }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(code ?? 'no code');
  await expect(page.locator('.timeline').getByText(new RegExp(`\\b${grams}\\sg`))).toHaveCount(1);
});

test('an entry can be taken back, sent or not', async ({ openAs }) => {
  const hand = await openPhone(openAs, '/quick/harvest');
  const { page } = hand;
  await hand.tap(page.locator('.tile').nth(4));
  const grams = 100 + (Math.floor(Date.now() / 1000) % 150);
  await hand.type(`${grams} g`);
  await hand.tap(save(page));
  await expectSent(page);
  await hand.tap(page.getByRole('button', { name: 'Undo' }));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Taken back');
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveCount(0);
  const batch = (await page.getByRole('link', { name: /^See batch / }).getAttribute('href')) ?? '';
  await expect(async () => {
    await page.goto(batch);
    const entry = page.locator('.timeline li', { hasText: new RegExp(`\\b${grams}\\sg`) });
    await expect(entry).toContainText(/voided/i, { timeout: 1_000 });
  }).toPass();
});

test('an absurd mass is asked about and can be put right', async ({ openAs }) => {
  const hand = await openPhone(openAs, '/quick/harvest');
  const { page } = hand;
  await hand.tap(page.locator('.tile').first());
  await hand.type('3000000');
  await hand.tap(save(page));
  await expect(page.locator('.error-summary, .question-panel')).toBeVisible();
  await expect(page.locator('form.quick-form')).toBeVisible();
});

test('contamination: what one sees is tapped, what it looks like is named after the choice', async ({
  openAs,
}) => {
  const hand = await openPhone(openAs, '/quick/contamination');
  const { page } = hand;
  await hand.tap(page.locator('.tile').first());
  await expect(page.getByText(/^Looks like green mould/)).toBeHidden();
  await hand.tap(page.locator('.tile', { hasText: /^Green$/ }));
  await expect(page.getByText(/^Looks like green mould .*this is no diagnosis\.$/)).toBeVisible();
  await expect(page.getByText('wear a P2 or N95 mask')).toBeVisible();
  await hand.tap(page.locator('[name="units"]'));
  await hand.type('1');
  await hand.tap(page.locator('.tile', { hasText: /^Isolated$/ }));
  await hand.tap(save(page));
  await expectSaved(page);
  expect(hand.taps).toBeLessThanOrEqual(6);
});

test('a check is three taps', async ({ openAs }) => {
  const hand = await openPhone(openAs, '/quick/check');
  const { page } = hand;
  await hand.tap(page.locator('.tile').first());
  await hand.tap(page.locator('.tile', { hasText: 'none newly contaminated' }));
  await hand.tap(save(page));
  await expectSaved(page);
  expect(hand.taps).toBeLessThanOrEqual(3);
});

/** Every target a thumb may want, with the size of its box; a radio or tick box counts with its label. */
async function targets(page: Page) {
  return page.locator('main').evaluate((main) =>
    [
      ...main.querySelectorAll<HTMLElement>(
        'a[href], button, input:not([type="hidden"]), select, textarea, summary',
      ),
    ]
      .map((element) => element.closest('label') ?? element)
      .filter((element) => element.checkVisibility())
      .map((element) => {
        const choice = element.parentElement?.classList.contains('choice') ? element.parentElement : element;
        const { width, height } = choice.getBoundingClientRect();
        return { what: (element.textContent || element.id).trim().slice(0, 40), width, height };
      }),
  );
}

for (const address of ['/quick/harvest', '/quick/contamination', '/quick/check']) {
  for (const email of [corin, rocio]) {
    test(`${address} for ${email}: every target is 48 by 48, and no focus is covered`, async ({ openAs }) => {
      const { page } = await openPhone(openAs, address, email);
      await page.locator('.tile').first().tap();
      for (const fold of await page.locator('main details > summary').all()) await fold.click();
      const small = (await targets(page)).filter(({ width, height }) => width < 47.5 || height < 47.5);
      expect(small).toEqual([]);

      await page.locator('h1').focus();
      for (let step = 0; step < 40; step += 1) {
        await page.keyboard.press('Tab');
        const covered = await page.evaluate(() => {
          const focused = document.activeElement;
          if (!(focused instanceof HTMLElement) || !focused.closest('main')) return undefined;
          const { left, right, top, bottom } = focused.getBoundingClientRect();
          const corners = [
            [left + 2, top + 2],
            [right - 2, top + 2],
            [left + 2, bottom - 2],
            [right - 2, bottom - 2],
          ] as const;
          const seen = corners.some(([x, y]) => {
            const there = document.elementFromPoint(x, y);
            return there !== null && (focused.contains(there) || there.contains(focused));
          });
          return seen ? undefined : focused.outerHTML.slice(0, 120);
        });
        expect(covered).toBeUndefined();
      }
    });
  }
}

test.describe('without script', () => {
  test('a harvest is saved, and the page offers the next one', async ({ openAs }) => {
    const page = await openAs(corin, { javaScriptEnabled: false });
    await page.goto('/quick/harvest');
    await page.locator('.tile').nth(3).click();
    await mass(page).fill('0.27');
    await page.locator('.tare summary').click();
    await page.locator('[name="tare"]').fill('20 g');
    await save(page).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Saved');
    await page.getByRole('link', { name: /^See batch / }).click();
    await expect(page.locator('main')).toContainText(/250\sg/);
  });
});
