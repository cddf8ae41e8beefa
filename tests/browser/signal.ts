import type { BrowserContext } from '@playwright/test';

const entries = '**/api/entries';

/**
 * No signal. A page that opens can get a request through before its browser knows that it is offline, so entries are held
 * up by themselves too; otherwise a test now and then finds one of them at the server already.
 */
export async function loseSignal(context: BrowserContext): Promise<void> {
  await context.route(entries, (route) => route.abort('internetdisconnected'));
  await context.setOffline(true);
}

export async function findSignal(context: BrowserContext): Promise<void> {
  await context.unroute(entries);
  await context.setOffline(false);
}
