import type { NextChoice, Outlook } from '@/lib/analysis/next-question/next-answer';
import type { MassUnit } from '@/lib/database/generated/enums';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';
import { methodList, perTen } from './next-names';
import { percentText } from './percent-text';

type Ask = {
  readonly choice: NextChoice;
  readonly site: string;
  readonly unit: MassUnit;
  readonly words: InsightWords;
};

/** What a site would do best with next, what cannot be told from it, and what would do worse. */
export function nextSentence({ choice, site, unit, words }: Ask): string {
  const { t, inSentence } = words;
  const { verdict, outlooks } = choice;
  if (verdict.kind === 'cannot') return t(`next.cannot.${verdict.reason}`, { site });
  const { leader, equal, worse, by } = verdict;
  const outlook = outlooks.find(({ methodId }) => methodId === leader);
  const place = { site, method: inSentence(leader), units: words.units };
  const loss = outlook ? lossPart(outlook, words) : undefined;
  const way = equal.length + worse.length === 0 ? 'only' : equal.length > 0 ? 'open' : 'best';
  const kg = outlook?.yield.kind === 'figure' ? perTen(outlook.yield.value, words) : '–';
  const first =
    by === 'loss'
      ? loss
        ? t(way === 'open' ? 'next.byLossOpen' : 'next.byLoss', { ...place, ...loss })
        : t('next.cannot.too-thin', { site })
      : loss
        ? t(`next.${way}`, { ...place, ...loss, kg, unit })
        : t(`next.${way}NoLoss`, { ...place, kg, unit });
  const rest = [
    equal.length === 0 ? '' : t('next.equal', { methods: methodList(equal, words) }),
    worse.length === 0
      ? ''
      : t(by === 'loss' ? 'next.worseLoss' : 'next.worse', { methods: methodList(worse, words) }),
  ];
  return [first, ...rest.filter((text) => text !== '').map(sentenceCase)].join(' ');
}

function lossPart({ loss }: Outlook, words: InsightWords) {
  if (loss.kind !== 'figure' || loss.interval.kind !== 'interval') return undefined;
  const { low, high } = loss.interval;
  return {
    loss: percentText(loss.value, words),
    low: percentText(low, words),
    high: percentText(high, words),
  };
}

/** What would teach most, in one or two sentences. */
export function teachingSentences({ choice, site, unit, words }: Ask): string[] {
  const { t, inSentence, number, units } = words;
  const { teaching } = choice;
  if (teaching.kind === 'none') return [t(`next.teachNone.${teaching.reason}`, { site })];
  const [most, ...others] = teaching.lessons;
  if (most === undefined) return [];
  const [first, second] = teaching.pair.map(inSentence);
  const width = (points: number) => (teaching.by === 'yield' ? number(points / 10, 2) : number(points, 1));
  const about = {
    count: teaching.batches,
    method: inSentence(most.methodId),
    site,
    first: first ?? '',
    second: second ?? '',
    from: width(most.from),
    to: width(most.to),
  };
  // A narrowing that rounds away is none to plan by.
  if (about.from === about.to) {
    const nothing =
      teaching.by === 'yield'
        ? t('next.teachNothing', { ...about, unit })
        : t('next.teachNothingLoss', { ...about, units });
    return [nothing, t('next.teachElsewhere')];
  }
  const sentences = [
    teaching.by === 'yield' ? t('next.teach', { ...about, unit }) : t('next.teachLoss', { ...about, units }),
    others
      .map(({ methodId, to }) => t('next.teachOthers', { method: inSentence(methodId), to: width(to) }))
      .join(' '),
    teachesLittle(most) ? t('next.teachLittle') : '',
  ];
  return sentences.filter((text) => text !== '');
}

/** Narrowing by less than a tenth is hardly worth a month of work. Our choice. */
export function teachesLittle({ from, to }: { readonly from: number; readonly to: number }): boolean {
  return (from - to) / from < 0.1;
}
