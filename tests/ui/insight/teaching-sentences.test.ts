import { expect, test } from 'vitest';
import type { NextChoice, Teaching } from '@/lib/analysis/next-question/next-answer';
import { teachingSentences } from '@/lib/ui/insight/next-sentences';
import { sentenceWords } from './sentence-words';

const words = sentenceWords('en');

function said(from: number, to: number): string[] {
  const teaching: Teaching = {
    kind: 'lessons',
    batches: 4,
    pair: ['bath', 'lime'],
    by: 'yield',
    lessons: [{ methodId: 'lime', from, to }],
  };
  const choice = { teaching } as NextChoice;
  return teachingSentences({ choice, site: 'Mill Lane', unit: 'kg', words });
}

test('what would teach most is said with how far it narrows', () => {
  expect(said(4.7, 3.9).join(' ')).toContain('from ± 0.47 to ± 0.39 kg');
});

test('a narrowing that rounds away is said to be none, with where to learn instead', () => {
  const [nothing, elsewhere] = said(4.71, 4.7);
  expect(nothing).toMatch(/^Even 4 more batches here would not narrow .* it stays ± 0\.47 kg/);
  expect(elsewhere).toContain('A trial at several sites would tell more');
});
