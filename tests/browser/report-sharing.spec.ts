import type { Page } from '@playwright/test';
import { buildReport, publishedDays } from './build-report';
import { daysAgo, fillDayBoxes, submit } from './fill';
import { expect, test, wren } from './people';
import { readPdfText, withoutSpaces } from './read-pdf-text';
import { tellStory } from './report-sharing-forms';

/** What the page shows of figures: every cell of a table, without what is folded behind it, and every single fact. */
async function figuresOf(page: Page): Promise<string[]> {
  return page.locator('article.report td, article.report tbody th, article.report dd').evaluateAll((cells) =>
    cells.flatMap((cell) => {
      const shown = cell.cloneNode(true) as HTMLElement;
      for (const folded of shown.querySelectorAll('details')) folded.remove();
      return [...(shown.querySelector('.cell-value') ?? shown).childNodes]
        .map((node) => node.textContent?.trim() ?? '')
        .filter((text) => text !== '');
    }),
  );
}

async function expectInPrint(page: Page, address: string): Promise<void> {
  const answer = await page.request.get(`${address}/pdf`, { timeout: 120_000 });
  expect(answer.headers()['content-type']).toBe('application/pdf');
  const print = await readPdfText(await answer.body());
  const figures = await figuresOf(page);
  expect(figures.length).toBeGreaterThan(20);
  expect(figures.filter((figure) => !print.includes(withoutSpaces(figure)))).toEqual([]);
}

test('a funder without an account reads a report by a link in Spanish, its print says the same, and what is withdrawn is gone', async ({
  openAs,
}) => {
  test.setTimeout(180_000);
  const coordinator = await openAs(wren);
  const report = await buildReport(coordinator, `Sharing ${Date.now()}`, publishedDays.byLink);
  const story = `Straw for ${Date.now()}`;
  await tellStory(coordinator, report, story);
  await coordinator.goto(report);
  await coordinator.getByRole('link', { name: 'Publish this report' }).click();
  await coordinator.getByRole('button', { name: 'Publish it for good' }).click();
  await expect(coordinator.getByRole('link', { name: 'Links for funders without an account' })).toBeVisible();
  await expect(coordinator.getByRole('img', { name: 'A bag with caps' })).toBeVisible();
  await expectInPrint(coordinator, report);

  await coordinator.goto(`${report}/links/new`);
  await coordinator.locator('[name="forWhom"]').fill('A foundation');
  await coordinator.locator('[name="language"][value="es"]').check();
  await fillDayBoxes(coordinator, 'lastDay', daysAgo(-30));
  await submit(coordinator);
  const made = coordinator.getByText(/\/by-link\/[\w-]+/).first();
  const link = /\/by-link\/[\w-]+$/.exec((await made.textContent()) ?? '')?.[0] ?? '';
  // Another link takes only another funder's name.
  await expect(coordinator.locator('[name="forWhom"]')).toHaveValue('');
  await expect(coordinator.locator('[name="language"][value="es"]')).toBeChecked();

  const visitor = await openAs(undefined);
  const opened = await visitor.goto(link);
  expect(opened?.headers()['referrer-policy']).toBe('no-referrer');
  expect(opened?.headers()['x-robots-tag']).toContain('noindex');
  await expect(visitor.getByText('Usted lee este informe por un enlace')).toBeVisible();
  await expect(visitor.getByRole('heading', { name: story })).toBeVisible();
  await expectInPrint(visitor, link);
  for (const form of ['xlsx', 'package'])
    expect((await visitor.request.get(`${link}/${form}`, { timeout: 120_000 })).ok()).toBe(true);

  await coordinator.goto(`${report}/links`);
  await expect(coordinator.getByRole('row', { name: /A foundation/ })).toContainText('data package');
  await coordinator.goto(`${report}/stories`);
  await coordinator.getByRole('link', { name: 'Write down a withdrawn consent' }).click();
  await coordinator.locator('[name="part"][value="picture"]').check();
  await submit(coordinator);
  await coordinator.waitForURL((url) => url.pathname === `${report}/stories`);
  await visitor.reload();
  await expect(visitor.getByText(/La foto de esta historia se retiró/)).toBeVisible();
  await expect(visitor.locator('.report-story img')).toHaveCount(0);

  await coordinator.goto(`${report}/links`);
  await coordinator.getByRole('button', { name: 'Withdraw the link for A foundation' }).click();
  await expect(coordinator.getByRole('row', { name: /A foundation/ })).toContainText('Withdrawn');
  for (const address of [link, `${link}/report`, `${link}/pdf`, '/by-link/no-such-link']) {
    const answer = await visitor.request.get(address, { headers: { 'accept-language': 'es' } });
    expect(answer.status()).toBe(404);
    expect(await answer.text()).toContain('Este enlace no abre nada');
  }
});
