import type { Page } from '@playwright/test';
import type { OpenAs } from './people';

/** A page with a form: its address as the folders of `app` write it, who opens it, and how its ids are found. */
export type FormPage = {
  readonly route: string;
  readonly name?: string;
  readonly as?: string;
  /** Finds an address to open, from links as a person would; without it the route is the address. */
  readonly find?: (page: Page, openAs: OpenAs) => Promise<string>;
  /** A text field whose words must come back; `false` where every field is a password or the one required text. */
  readonly keeps?: string | false;
};

export const uuid = '[0-9a-f-]{36}';
export const openBatch = '/batches?state=open';

/** The first link of a page that leads to such an address. */
export async function linkOn(page: Page, start: string, pattern: RegExp): Promise<string | undefined> {
  await page.goto(start);
  const addresses = await page
    .locator('main a[href]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  return addresses.map((address) => address.split('?')[0] ?? '').find((address) => pattern.test(address));
}

/** An address below the first record of a list. */
export function below(list: string, rest = ''): (page: Page) => Promise<string> {
  const folder = list.split('?')[0];
  return async (page) => {
    const found = await linkOn(page, list, new RegExp(`^${folder}/${uuid}$`));
    if (found === undefined) throw new Error(`No record is linked on ${list}`);
    return found + rest;
  };
}

/** The address of an entry of a batch's story, from the latest closed batches that have such an entry. */
export function inStory(pattern: RegExp): (page: Page) => Promise<string> {
  return async (page) => {
    let list: string | null = '/batches?state=closed';
    for (let pages = 0; list !== null && pages < 4; pages += 1) {
      await page.goto(list);
      const batches = await page
        .locator('main tbody a[href^="/batches/"]')
        .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
      const [older] = await page
        .locator('main a[rel="next"]')
        .evaluateAll((links) => links.map((link) => link.getAttribute('href')));
      list = older ?? null;
      for (const batch of batches) {
        const found = await linkOn(page, batch, pattern);
        if (found !== undefined) return found;
      }
    }
    throw new Error(`No batch of the list has an entry like ${pattern}`);
  };
}
