import type { NextBrief, NextPart } from './next-answer';

/** The row of a site on the page of every site; nothing for a site without a choice. */
export function nextBrief({ siteId, choices: [first] }: NextPart): NextBrief[] {
  if (first === undefined) return [];
  const { verdict, outlooks } = first;
  if (verdict.kind === 'cannot') return [{ siteId, best: null, state: 'none' }];
  const { leader, equal, worse } = verdict;
  const best = outlooks.find(({ methodId }) => methodId === leader);
  return [
    {
      siteId,
      best: best ? { methodId: leader, loss: best.loss, yield: best.yield, equal } : null,
      state: equal.length > 0 ? 'open' : worse.length > 0 ? 'told' : 'none',
    },
  ];
}
