import type { Signal } from '@/lib/analysis/watch-question/signal';
import { formatNumber } from '../format/number-text';
import type { DynamicWords } from '../i18n/dynamic-words';

/** What a signal is written with, on a page or in a letter. */
export type SignalWords = {
  readonly words: DynamicWords;
  readonly locale: string;
  readonly siteName: (siteId: string) => string;
  /** Codes of batches and spawn lots by id. */
  readonly codes: ReadonlyMap<string, string>;
};

/** More codes than this are counted instead. */
const mostCodes = 4;

/** A few codes in words, and how many there are besides. */
function codeList(codes: readonly string[], locale: string): { codes: string; more: number } {
  if (codes.length <= mostCodes)
    return { codes: new Intl.ListFormat(locale, { type: 'conjunction' }).format(codes), more: 0 };
  const named = codes.slice(0, mostCodes - 1);
  return { codes: named.join(', '), more: codes.length - named.length };
}

/** What stepped out of line, why it is called so, in one sentence. */
export function signalSentence(signal: Signal, { words, locale, siteName, codes }: SignalWords): string {
  const number = (value: number, digits = 0) => formatNumber(value, locale, digits);
  const site = 'siteId' in signal ? siteName(signal.siteId) : '';
  const code = (id: string) => codes.get(id) ?? '–';
  switch (signal.kind) {
    case 'lot':
      return words('watch.signal.lot', {
        lot: code(signal.lotId),
        observed: number(signal.observed),
        units: signal.units,
        expected: number(signal.expected),
      });
    case 'course':
      return words(`watch.signal.course.${signal.side}`, {
        site,
        average: number(signal.average, 1),
        usual: number(signal.usual, 1),
      });
    case 'run':
      return words(`watch.signal.run.${signal.verdict}`, { site, run: signal.code });
    case 'loss':
      return words('watch.signal.loss', {
        ...{ site, batch: code(signal.batchId), found: number(signal.found) },
        ...{ units: signal.units, most: number(signal.mostLikely) },
      });
    case 'yield':
      return words(`watch.signal.yield.${signal.side}`, {
        ...{ site, batch: code(signal.batchId), be: number(signal.bePercent) },
        ...{ low: number(signal.low), high: number(signal.high) },
      });
    case 'records': {
      const { missing, implausible } = signal;
      return words(`watch.signal.records.${missing === 0 ? 'implausible' : 'missing'}`, {
        ...{ site, missing, implausible },
        ...codeList(signal.codes, locale),
      });
    }
  }
}
