import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';

/** Whole numbers where they say enough, one decimal below 2. */
function rounded(value: number, words: InsightWords): string {
  return words.number(value, Math.abs(value) < 2 ? 1 : 0);
}

/** What two methods lose against each other, in one sentence, with why the raw table says something else or what would tell. */
export function pairSentence(pair: MethodPair, words: InsightWords): string {
  const { t, inSentence, units } = words;
  const [a, b] = [inSentence(pair.first), inSentence(pair.second)];
  const { points } = pair;
  const would = wouldSentence(pair, words);
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
    const limits = { low: rounded(low, words), high: rounded(high, words) };
    return `${t('methods.cannotTell', { first: a, second: b, units, ...limits })} ${would}`.trim();
  }
  const more = pair.verdict === 'more';
  const tells = t('methods.tells', {
    first: more ? a : b,
    second: more ? b : a,
    units,
    points: rounded(Math.abs(points.value), words),
    low: rounded(more ? low : -high, words),
    high: rounded(more ? high : -low, words),
  });
  return `${sentenceCase(tells)} ${whySentence(pair, points.value, words)}`.trim();
}

function whySentence({ why, rawPoints }: MethodPair, adjusted: number, words: InsightWords): string {
  const { t, names, inSentence } = words;
  if (rawPoints === null) return '';
  if (why === null) return t('methods.same');
  const towards = Math.sign(adjusted) * rawPoints;
  const way = towards <= 0.5 ? 'hid' : 'other';
  const raw = rounded(towards, words);
  const method = inSentence(why.method);
  if (why.kind === 'lots') return t(`methods.${way}.lots`, { method, lose: why.lotsLose, raw });
  const sites = why.siteIds.map((id) => names.siteName(id)).join(', ');
  return t(`methods.${way}.sites`, { method, lose: why.sitesLose, sites, raw });
}

function wouldSentence({ would }: MethodPair, { t, names, inSentence, number }: InsightWords): string {
  if (would === null) return '';
  if (would.kind === 'time') return t('methods.would.time');
  const place = { method: inSentence(would.method), site: names.siteName(would.siteId) };
  return would.kind === 'sites'
    ? t('methods.would.sites', place)
    : t('methods.would.batches', { ...place, count: would.batches, points: number(would.points) });
}

/** What the two give: biological efficiency with total losses as 0, and among batches that cropped. */
export function yieldSentences(pair: MethodPair, words: InsightWords): string[] {
  const { t, inSentence } = words;
  const [a, b] = [inSentence(pair.first), inSentence(pair.second)];
  const { yieldPoints: points, croppedPercent: cropped } = pair;
  const sentences: string[] = [];
  if (points.kind === 'figure' && points.interval.kind === 'interval') {
    const { low, high } = points.interval;
    const more = pair.yieldVerdict === 'more';
    sentences.push(
      pair.yieldVerdict === 'cannot-tell'
        ? t('methods.yieldCannot', { low: rounded(low, words), high: rounded(high, words) })
        : t('methods.yieldTells', {
            first: more ? a : b,
            second: more ? b : a,
            points: rounded(Math.abs(points.value), words),
            low: rounded(more ? low : -high, words),
            high: rounded(more ? high : -low, words),
          }),
    );
  }
  if (cropped !== null) {
    sentences.push(
      t('methods.cropped', {
        first: a,
        second: b,
        percent: rounded(Math.abs(cropped.estimate), words),
        way: cropped.estimate >= 0 ? 'more' : 'less',
        low: rounded(cropped.low, words),
        high: rounded(cropped.high, words),
      }),
    );
  }
  return sentences.map(sentenceCase);
}
