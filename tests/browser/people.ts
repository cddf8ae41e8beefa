import { type Browser, test as base, expect, type Page } from '@playwright/test';
import { demoPassword, storyCoordinator, storyFunder, storySecondCoordinator } from '@/seed/story/people';

export const ives = 'ives@larkmoor.example';
/** Works where no other test writes. */
export const odell = 'odell@larkmoor.example';
/** Writes the quick entries. */
export const corin = 'corin@larkmoor.example';
/** Their site has a load that fell out of its window. */
export const posy = 'posy@larkmoor.example';
export const rocio = 'rocio@larkmoor.example';
export const wren = storyCoordinator.email;
/** A coordinator who reads Spanish. */
export const aurelia = storySecondCoordinator.email;
export const teal = storyFunder.email;
/** Member of the other network. */
export const juniper = 'juniper@saltbrook.example';

type Options = Parameters<Browser['newContext']>[0];
/** Opens a page for a person of the demo; without an e-mail for somebody who is not signed in. */
export type OpenAs = (email: string | undefined, options?: Options) => Promise<Page>;
type State = Exclude<NonNullable<Options>['storageState'], undefined | string>;

/** Notes what a browser complains about: a refused script, a failed request, an error thrown in the page. */
function watch(page: Page, complaints: string[]): void {
  page.on('console', (message) => {
    if (message.type() === 'error')
      complaints.push(`${page.url()}: ${message.text()} (${message.location().url})`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 500) complaints.push(`${response.url()}: answered ${response.status()}`);
  });
}

/** Signs in by the form, with or without script. */
export async function signInByForm(page: Page, email: string): Promise<void> {
  await page.goto('/sign-in');
  await page.locator('[name="email"]').fill(email);
  await page.locator('[name="password"]').fill(demoPassword);
  await page.locator('main form button[type="submit"]').click();
  await page.waitForURL((url) => url.pathname !== '/sign-in' && url.pathname !== '/');
}

/**
 * `openAs` opens a page for a signed-in person of the demo; each worker signs a person in once. A test fails when a
 * page of it complained on the console, threw, or was answered with a server's error.
 */
export const test = base.extend<{ complaints: string[]; openAs: OpenAs }, { states: Map<string, State> }>({
  states: [new Map(), { scope: 'worker' }],
  complaints: [
    async ({ page }, use) => {
      const complaints: string[] = [];
      watch(page, complaints);
      await use(complaints);
      expect(complaints).toEqual([]);
    },
    { auto: true },
  ],
  openAs: async ({ browser, baseURL, states, complaints }, use) => {
    const opened: Page[] = [];
    const openAs: OpenAs = async (email, options = {}) => {
      const state = email === undefined ? undefined : states.get(email);
      const context = await browser.newContext({
        ...(baseURL === undefined ? {} : { baseURL }),
        ...options,
        ...(state === undefined ? {} : { storageState: state }),
      });
      const page = await context.newPage();
      opened.push(page);
      watch(page, complaints);
      if (email !== undefined && state === undefined) {
        await signInByForm(page, email);
        states.set(email, await context.storageState());
      }
      return page;
    };
    await use(openAs);
    for (const page of opened) await page.context().close();
  },
});
export { expect };
