import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { submit } from './fill';
import type { FormPage } from './find-address';
import { formPages } from './form-addresses';
import { expect, type OpenAs, test } from './people';

const typed = 'Kept as typed: ñ 🍄 <b>&amp;';
const form = 'main form.record-form';

/** Addresses found once, by the name of the form: records of the demo stay where they are. */
const addresses = new Map<string, string>();

async function openForm(one: FormPage, anyone: Page, openAs: OpenAs, script: boolean): Promise<Page> {
  const key = one.name ?? one.route;
  const open = async (javaScriptEnabled: boolean) =>
    javaScriptEnabled && one.as === undefined ? anyone : openAs(one.as, { javaScriptEnabled });
  const page = await open(script);
  let address = addresses.get(key);
  if (address === undefined) {
    // Finding a record may take steps that need script, so the form without script is found with it.
    address = (await one.find?.(script ? page : await open(true), openAs)) ?? one.route;
    addresses.set(key, address);
  }
  await page.goto(address);
  await expect(page.locator(form)).toBeVisible();
  return page;
}

/** Empties what a person could empty, then types into a text field; answers the name of that field. */
async function emptyAndType(page: Page, keeps: FormPage['keeps']): Promise<string | undefined> {
  return page.locator(form).evaluate(
    (element, { keeps, typed }) => {
      const fields = [...element.querySelectorAll('input, select, textarea')];
      for (const field of fields) {
        if (field instanceof HTMLSelectElement) {
          if (!field.name.endsWith('__unit')) field.value = '';
        } else if (field instanceof HTMLTextAreaElement) field.value = '';
        else if (field instanceof HTMLInputElement) {
          if (field.type === 'radio' || field.type === 'checkbox') field.checked = false;
          else if (field.type !== 'hidden') field.value = '';
        }
      }
      if (keeps === false) return undefined;
      const texts = fields.filter(
        (field): field is HTMLInputElement | HTMLTextAreaElement =>
          field instanceof HTMLTextAreaElement ||
          (field instanceof HTMLInputElement && ['text', 'email'].includes(field.type)),
      );
      const kept = texts.find(({ name }) => name === (keeps ?? 'note')) ?? texts[0];
      if (kept === undefined) return undefined;
      kept.value = typed;
      return kept.name;
    },
    { keeps, typed },
  );
}

async function expectRefusal(page: Page): Promise<void> {
  await expect(page.locator('.error-summary')).toBeVisible();
  expect(await page.title()).toMatch(/^Error: /);
  const targets = await page
    .locator('.error-summary a')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href')?.slice(1) ?? ''));
  expect(targets.length).toBeGreaterThan(0);
  for (const target of targets) await expect(page.locator(`[id="${target}"]`)).toHaveCount(1);
}

/** The routes of `app` whose page has a form that records something. */
function routesWithForms(): string[] {
  const root = path.resolve(import.meta.dirname, '../../app');
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => path.basename(file) === 'page.tsx')
    .filter((file) =>
      /<(RecordForm|AddRecordForm|(Harvest|Contamination|Check)OnPhone)\b/.test(
        readFileSync(path.join(root, file), 'utf8'),
      ),
    )
    .map(
      (file) =>
        `/${file
          .split(path.sep)
          .slice(0, -1)
          .filter((part) => !part.startsWith('('))
          .join('/')}`,
    )
    .sort();
}

test('the table has every page with a form, and no other', () => {
  expect([...new Set(formPages.map(({ route }) => route))].sort()).toEqual(routesWithForms());
});

for (const one of formPages) {
  const name = one.name ?? one.route;

  test(`${name}: left empty, it says what is missing and loses nothing`, async ({ page: anyone, openAs }) => {
    const page = await openForm(one, anyone, openAs, true);
    const kept = await emptyAndType(page, one.keeps);
    await submit(page);
    await expectRefusal(page);
    await expect(page.locator('.error-summary')).toBeFocused();
    if (kept !== undefined) await expect(page.locator(`${form} [name="${kept}"]`)).toHaveValue(typed);
    for (const link of await page.locator('.error-summary a').all()) {
      const target = (await link.getAttribute('href'))?.slice(1) ?? '';
      await link.click();
      await expect(page.locator(`[id="${target}"]`)).toBeFocused();
    }
  });

  test(`${name}: without script, left empty, it says the same`, async ({ page: anyone, openAs }) => {
    const page = await openForm(one, anyone, openAs, false);
    const kept = await emptyAndType(page, one.keeps);
    await submit(page);
    await expectRefusal(page);
    if (kept !== undefined) await expect(page.locator(`${form} [name="${kept}"]`)).toHaveValue(typed);
  });

  test(`${name}: a megabyte, emoji and control characters are refused and nothing is written`, async ({
    page: anyone,
    openAs,
  }) => {
    const page = await openForm(one, anyone, openAs, true);
    const address = page.url();
    await page.locator(form).evaluate((element) => {
      const junk = '🍄\u0000\u0007\u001b[31m\u202e';
      // Another day than today, so that the boxes of the date count.
      for (const another of element.querySelectorAll('input[name$="__quick"][value="other"]'))
        if (another instanceof HTMLInputElement) another.checked = true;
      const texts = [...element.querySelectorAll('input, textarea')].filter(
        (field): field is HTMLInputElement | HTMLTextAreaElement =>
          field instanceof HTMLTextAreaElement ||
          (field instanceof HTMLInputElement && ['text', 'email', 'password'].includes(field.type)),
      );
      for (const field of texts) field.value = junk;
      const long = texts.find((field) => field instanceof HTMLTextAreaElement) ?? texts[0];
      // In words: a browser takes minutes to break one word of a megabyte into lines.
      if (long !== undefined) long.value = junk + 'straw '.repeat(175_000);
    });
    await submit(page);
    await expectRefusal(page);
    expect(page.url()).toBe(address);
  });
}
