import { expect, test } from 'vitest';
import type { NextChoice, NextPart, NextVerdict } from '@/lib/analysis/next-question/next-answer';
import { nextBrief } from '@/lib/analysis/next-question/next-brief';

const outlook = { methodId: 'bath', loss: { kind: 'counts' }, yield: { kind: 'counts' } };

function part(verdict: NextVerdict | undefined): NextPart {
  const choices = verdict === undefined ? [] : [{ verdict, outlooks: [outlook] } as unknown as NextChoice];
  return { siteId: 'mill-lane', choices } as unknown as NextPart;
}

const told = (equal: string[], worse: string[]): NextVerdict => ({
  ...{ kind: 'told', by: 'yield', leader: 'bath' },
  ...{ equal, worse },
});

test('a site is told, open or without a choice by what its leading method can be told from', () => {
  const stateOf = (verdict: NextVerdict | undefined) => nextBrief(part(verdict)).map(({ state }) => state);
  expect(stateOf(told([], ['lime']))).toEqual(['told']);
  expect(stateOf(told(['steam'], ['lime']))).toEqual(['open']);
  expect(stateOf(told([], []))).toEqual(['none']);
  expect(stateOf({ kind: 'cannot', reason: 'too-thin' })).toEqual(['none']);
  expect(stateOf(undefined)).toEqual([]);
});

test('the row names the leading method with its figures and what it cannot be told from', () => {
  expect(nextBrief(part(told(['steam'], [])))[0]?.best).toEqual({ ...outlook, equal: ['steam'] });
});
