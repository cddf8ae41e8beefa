import { expect, ives, rocio, test } from './people';

const eating = [
  ['/quick/harvest', 'Before you eat, give or sell it', 'Antes de comer, regalar o vender'],
  ['/weighings/new', 'Before you eat, give or sell it', 'Antes de comer, regalar o vender'],
  ['/programme/sales/new', 'Before you sell', 'Antes de vender'],
] as const;

test('wherever mushrooms are weighed or sold the cautions stand on the page, in both languages', async ({
  openAs,
}) => {
  const [english, spanish] = [await openAs(ives), await openAs(rocio)];
  for (const [address, title, titulo] of eating)
    for (const [page, words, rule] of [
      [english, title, 'your local rules'],
      [spanish, titulo, 'las normas de su localidad'],
    ] as const) {
      await page.goto(address);
      const note = page.getByRole('note').filter({ hasText: words });
      await expect(note, address).toBeVisible();
      await expect(note, address).toContainText(rule);
    }
});
