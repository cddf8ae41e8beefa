import { describe, expect, it } from 'vitest';
import { tallyAnswers, tallyMean, tallyText } from '@/lib/growing/answer-tally';

describe('answers typed one after the other', () => {
  it('are counted by point of the scale, whatever stands between them', () => {
    expect(tallyAnswers('3 4, 2;5\n3', 5)).toEqual({ kind: 'tally', counts: [0, 1, 2, 1, 1] });
    expect(tallyAnswers('  ', 4)).toEqual({ kind: 'tally', counts: [0, 0, 0, 0] });
    expect(tallyAnswers('٣ ٤', 5)).toEqual({ kind: 'tally', counts: [0, 0, 1, 1, 0] });
  });

  it('are refused outside the scale and when they are no numbers', () => {
    expect(tallyAnswers('1 6', 5)).toEqual({ kind: 'outside-scale', answer: 6 });
    expect(tallyAnswers('0', 5)).toEqual({ kind: 'outside-scale', answer: 0 });
    expect(tallyAnswers('1 yes', 5)).toEqual({ kind: 'unreadable' });
    expect(tallyAnswers('2.5', 5)).toEqual({ kind: 'unreadable' });
  });

  it('read back as typed, in order', () => {
    const counts = [2, 0, 1, 3];
    expect(tallyText(counts)).toBe('1 1 3 4 4 4');
    expect(tallyAnswers(tallyText(counts), 4)).toEqual({ kind: 'tally', counts });
  });

  it('have a mean when there is one answer or more', () => {
    expect(tallyMean([1, 0, 0, 3])).toEqual({ n: 4, mean: 3.25 });
    expect(tallyMean([0, 0])).toEqual({ n: 0, mean: null });
  });
});
