import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { KeptCodes } from '@/lib/ui/page/kept-codes';

const drawn = (text: string) => renderToStaticMarkup(<KeptCodes text={text} />);
const kept = (code: string) => `<span class="whitespace-nowrap">${code}</span>`;

describe('codes in a sentence', () => {
  test('stay on one line, each of them, and the sentence says the same', () => {
    expect(drawn('Read T-FXK-34, then KHH-347')).toBe(
      `<span>Read ${kept('T-FXK-34')}, then ${kept('KHH-347')}</span>`,
    );
  });

  test('are told from words with hyphens', () => {
    expect(drawn('Hot-water bath')).toBe('<span>Hot-water bath</span>');
  });
});
