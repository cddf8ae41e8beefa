import { plainEntryText } from './entry-text';

/** How often each point of a scale from 1 to its length was chosen. */
export type AnswerTally = readonly number[];

export type TallyEntry =
  | { readonly kind: 'tally'; readonly counts: AnswerTally }
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'outside-scale'; readonly answer: number };

const mostAnswers = 500;

/**
 * Counts answers typed one after the other, as read off a pile of paper: "3 4, 2;5" on a scale of 5 is 0, 1, 1, 1, 1.
 * Nothing typed is a tally of noughts.
 */
export function tallyAnswers(text: string, scaleMost: number): TallyEntry {
  const counts = new Array<number>(scaleMost).fill(0);
  // Longer than one quantity, so each number is made plain on its own.
  const parts = text.split(/[\s,;/]+/u).filter((part) => part !== '');
  if (parts.length > mostAnswers) return { kind: 'unreadable' };
  for (const part of parts) {
    const plain = plainEntryText(part);
    if (plain === null || !/^\d{1,3}$/.test(plain)) return { kind: 'unreadable' };
    const answer = Number(plain);
    if (answer < 1 || answer > scaleMost) return { kind: 'outside-scale', answer };
    counts[answer - 1] = (counts[answer - 1] ?? 0) + 1;
  }
  return { kind: 'tally', counts };
}

/** The answers of a tally one after the other, as they can be typed again. */
export function tallyText(counts: AnswerTally): string {
  return counts.flatMap((count, index) => new Array<number>(count).fill(index + 1)).join(' ');
}

/** Number of answers and their mean on the scale; the mean is null when there are none. */
export function tallyMean(counts: AnswerTally): { readonly n: number; readonly mean: number | null } {
  const n = counts.reduce((sum, count) => sum + count, 0);
  const total = counts.reduce((sum, count, index) => sum + count * (index + 1), 0);
  return { n, mean: n === 0 ? null : total / n };
}
