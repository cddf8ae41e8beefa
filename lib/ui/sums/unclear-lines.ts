import type { Entries } from './read-entries';
import type { SumLine, SumWords } from './sum-input';

/** Says that a number was not understood, so that a sum without it is not taken for the whole. */
export function unclearLines(entries: Entries, words: SumWords): readonly SumLine[] {
  return entries.unclear() === 0 ? [] : [{ key: 'unclear', text: words.unclear, tone: 'watch' }];
}
