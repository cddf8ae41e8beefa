import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';
import { percentAboveZero, percentText } from './percent-text';
import { wouldSentence } from './would-sentence';

/** Limits that leave out 0 although all pairs taken together do not tell. */
const alone = (low: number, high: number) => low > 0 || high < 0;

/** What two methods lose against each other, in one sentence, with why the raw table says something else or what would tell. */
export function pairSentence(pair: MethodPair, words: InsightWords): string {
  const { t, inSentence, units } = words;
  const [a, b] = [inSentence(pair.first), inSentence(pair.second)];
  const { points } = pair;
  const would = wouldSentence(pair.would, 'would', words);
  if (points.kind !== 'figure' || points.interval.kind !== 'interval') {
    const apart = points.kind === 'cannot' && points.reason === 'no-shared-site';
    return [
      sentenceCase(t(apart ? 'methods.apart' : 'methods.noRate', { first: a, second: b })),
      apart ? would : '',
    ]
      .join(' ')
      .trim();
  }
  const { low, high } = points.interval;
  if (pair.verdict === 'cannot-tell') {
    const key = alone(low, high) ? 'methods.cannotTellAlone' : 'methods.cannotTell';
    return `${t(key, { first: a, second: b, units, ...limitsText(low, high, words) })} ${would}`.trim();
  }
  const more = pair.verdict === 'more';
  const tells = t('methods.tells', {
    first: more ? a : b,
    second: more ? b : a,
    units,
    points: percentText(Math.abs(points.value), words),
    ...(more ? limitsText(low, high, words) : limitsText(-high, -low, words)),
  });
  return `${sentenceCase(tells)} ${whySentence(pair, points.value, words)}`.trim();
}

function whySentence({ why, rawPoints }: MethodPair, adjusted: number, words: InsightWords): string {
  const { t, names, inSentence } = words;
  if (rawPoints === null) return '';
  if (why === null) return t('methods.same');
  const towards = Math.sign(adjusted) * rawPoints;
  const way = towards <= 0.5 ? 'hid' : 'other';
  const raw = percentText(towards, words);
  const method = inSentence(why.method);
  if (why.kind === 'lots') return t(`methods.${way}.lots`, { method, lose: why.lotsLose, raw });
  const sites = why.siteIds.map((id) => names.siteName(id)).join(', ');
  return t(`methods.${way}.sites`, { method, lose: why.sitesLose, sites, raw });
}

/** What the two give: biological efficiency with total losses as 0, and among batches that cropped. */
export function yieldSentences(pair: MethodPair, words: InsightWords): string[] {
  const { t } = words;
  const [first, second] = [words.inSentence(pair.first), words.inSentence(pair.second)];
  const { yieldPoints: points, croppedPercent: cropped } = pair;
  const sentences: string[] = [];
  if (points.kind === 'figure' && points.interval.kind === 'interval') {
    const { low, high } = points.interval;
    const more = pair.yieldVerdict === 'more' || (pair.yieldVerdict === 'cannot-tell' && low > 0);
    const ordered = more ? { first, second } : { first: second, second: first };
    const limits = more ? limitsText(low, high, words) : limitsText(-high, -low, words);
    if (pair.yieldVerdict !== 'cannot-tell') {
      const value = percentText(Math.abs(points.value), words);
      sentences.push(t('methods.yieldTells', { ...ordered, points: value, ...limits }));
    } else {
      const said = alone(low, high)
        ? t('methods.yieldAlone', { ...ordered, ...limits })
        : t('methods.yieldCannot', limitsText(low, high, words));
      sentences.push(`${said} ${wouldSentence(pair.yieldWould, 'yieldWould', words)}`.trim());
    }
  }
  if (cropped !== null) {
    const percent = percentText(Math.abs(cropped.estimate), words);
    const way = cropped.estimate >= 0 ? 'more' : 'less';
    const maybe = alone(cropped.low, cropped.high) ? 'methods.croppedAlone' : 'methods.croppedMaybe';
    const key = pair.croppedTells ? 'methods.cropped' : maybe;
    sentences.push(t(key, { first, second, percent, way, ...limitsText(cropped.low, cropped.high, words) }));
  }
  return sentences.map(sentenceCase);
}

const limitsText = (low: number, high: number, words: InsightWords) => ({
  low: percentAboveZero(low, words),
  high: percentAboveZero(high, words),
});
