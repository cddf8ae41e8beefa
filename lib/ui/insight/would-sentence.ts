import type { WhatWouldTell } from '@/lib/analysis/method-question/methods-answer';
import type { InsightWords } from './insight-words';

/** What would help to tell two methods apart, in losses ('would') or in yield; nothing where nothing is asked for. */
export function wouldSentence(
  would: WhatWouldTell | null,
  of: 'would' | 'yieldWould',
  { t, names, inSentence, number, language }: InsightWords,
): string {
  if (would === null) return '';
  if (would.kind === 'time' || would.kind === 'unreckoned') return t(`methods.would.${would.kind}`);
  if (would.kind === 'sites') {
    const place = { method: inSentence(would.method), site: names.siteName(would.siteId) };
    return would.enough
      ? t(`methods.${of}.sites`, { ...place, points: number(would.points) })
      : t('methods.would.fewSites', place);
  }
  const list = new Intl.ListFormat(language, { type: 'conjunction' });
  const lacks = would.lacks.map(({ method, batches }) =>
    t('methods.would.lack', { count: batches, method: inSentence(method) }),
  );
  return t(`methods.${of}.batches`, {
    lacks: list.format(lacks),
    sites: list.format(would.siteIds.map((id) => names.siteName(id))),
    points: number(would.points),
  });
}
