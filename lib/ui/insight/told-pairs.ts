import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';

/** All pairs in two sentences: which method loses more than which, most losses first, and which are not told apart. */
export function toldPairs(pairs: readonly MethodPair[], words: InsightWords): string[] {
  const { t, inSentence, language } = words;
  if (pairs.length < 2) return [];
  const list = (names: readonly string[]) =>
    new Intl.ListFormat(language, { type: 'conjunction' }).format(
      names.toSorted((a, b) => a.localeCompare(b, language)),
    );
  const losesMoreThan = new Map<string, string[]>();
  const open: string[] = [];
  for (const { first, second, verdict, points } of pairs) {
    if (verdict === 'cannot-tell') {
      const name = t('methods.pair', { first: inSentence(first), second: inSentence(second) });
      if (points.kind === 'figure') open.push(name);
      continue;
    }
    const [more, fewer] = verdict === 'more' ? [first, second] : [second, first];
    losesMoreThan.set(more, [...(losesMoreThan.get(more) ?? []), inSentence(fewer)]);
  }
  const told = [...losesMoreThan].sort(
    ([a, ofA], [b, ofB]) => ofB.length - ofA.length || inSentence(a).localeCompare(inSentence(b), language),
  );
  return [
    ...told.map(([method, others]) =>
      sentenceCase(t('methods.losesMore', { method: inSentence(method), others: list(others) })),
    ),
    ...(open.length === 0 ? [] : [t('methods.notApart', { pairs: list(open) })]),
  ];
}
