import type { Page } from '@playwright/test';
import { readers } from './main-pages';
import { expect, test } from './people';

const narrow = { width: 320, height: 740 };

/**
 * Makes every text of the page 40 % longer, as another language would: short ones as one longer word, long ones by
 * further words. Figures and codes stay: no language lengthens those.
 */
async function lengthen(page: Page): Promise<number> {
  return page.evaluate(() => {
    const filler = 'ñandutí colonización lentísima de fructificaciones ';
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const texts: Text[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
      if (node instanceof Text && !node.parentElement?.closest('script, style, svg, .visually-hidden'))
        texts.push(node);
    let changed = 0;
    for (const text of texts) {
      const words = text.data.trim();
      if (!/\p{L}{3}/u.test(words) || /^[A-Z]{2,5}-\d/.test(words)) continue;
      const more = Math.ceil(words.length * 0.4);
      const longer =
        words.length < 12
          ? 'x'.repeat(more)
          : ` ${filler.repeat(Math.ceil(more / filler.length)).slice(0, more)}`;
      text.data = text.data.replace(/\s*$/, (space) => longer + space);
      changed += 1;
    }
    return changed;
  });
}

/** What no longer fits: the page itself, or words that leave the box of something to press. */
async function broken(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const sideways = scrollWidth > clientWidth ? [`the page is ${scrollWidth} px wide`] : [];
    const spilling = [
      ...document.querySelectorAll<HTMLElement>('button, .button, .tile, .chip, summary, legend'),
    ]
      .filter((element) => element.checkVisibility() && element.scrollWidth > element.clientWidth + 1)
      .filter((element) => getComputedStyle(element).display !== 'inline')
      .map((element) => `spills: ${(element.textContent ?? '').trim().slice(0, 60)}`);
    return [...sideways, ...spilling];
  });
}

for (const { language, email, pages } of readers.filter((_, index) => index === 0 || index === 3)) {
  test(`words 40 % longer break no page at 320 px, in ${language} for ${email}`, async ({ openAs }) => {
    test.setTimeout(120_000);
    // Without script: what React makes of words that changed under it is no question of layout.
    const page = await openAs(email, { viewport: narrow, javaScriptEnabled: false });
    for (const address of pages) {
      await page.goto(address);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      expect(await lengthen(page)).toBeGreaterThan(10);
      expect(await broken(page), address).toEqual([]);
    }
  });
}
