import { aurelia, expect, ives, test, wren } from './people';

const coordinators = [
  ...['/comparison', '/questions/costs', '/questions/next', '/questions/sites', '/questions/lots'],
  ...['/questions/methods', '/questions/losses', '/batches', '/people', '/settings', '/trials'],
];

// What a phone shows without scrolling sideways; a table in a box that scrolls hides its last columns.
for (const [email, pages] of [
  [wren, coordinators],
  [aurelia, coordinators],
  [ives, ['/batches', '/weighings', '/substrate-lots', '/spawn-lots', '/treatments', '/sites', '/reports']],
] as const) {
  test(`no table of ${email} scrolls sideways at 360 px, and each stays a table`, async ({ openAs }) => {
    test.setTimeout(180_000);
    const page = await openAs(email, { viewport: { width: 360, height: 740 } });
    for (const address of pages) {
      await page.goto(address);
      const tables = page.getByRole('table');
      await expect(tables.first(), address).toBeVisible({ timeout: 60_000 });
      const hidden = await page
        .locator('.table-box')
        .evaluateAll((boxes) =>
          boxes
            .filter((box) => box.scrollWidth > box.clientWidth)
            .map((box) => box.querySelector('caption')?.textContent),
        );
      expect(hidden, address).toEqual([]);
      await expect(tables.first().getByRole('columnheader').first()).toHaveText(/\S/);
      await expect(tables.first().getByRole('rowheader').first()).toHaveText(/\S/);
    }
  });
}
