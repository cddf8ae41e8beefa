import type { MethodsAnswer } from '@/lib/analysis/method-question/methods-answer';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import { Figure } from '../figure/figure';
import { FigureHistory } from '../figure/figure-history';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';
import { MethodCurvesView } from './method-curves-view';
import { MethodsTable } from './methods-table';
import { MethodsUse } from './methods-use';
import { pairSentence, yieldSentences } from './pair-sentences';
import { toldPairs } from './told-pairs';

/** Answer first: one sentence about two methods, then every method raw and adjusted, every pair, who uses what, when. */
export function MethodsAnswerView({ answer, words }: { answer: MethodsAnswer; words: InsightWords }) {
  const { t, names, view, language } = words;
  const headline = answer.headline === null ? undefined : answer.pairs[answer.headline];
  const methods = [...answer.methods].sort((a, b) =>
    names.methodName(a.method).localeCompare(names.methodName(b.method), language),
  );
  const rows = methods.flatMap((line, index) =>
    [
      { figure: line.raw, label: t('methods.raw'), key: 'raw' },
      { figure: line.adjusted, label: t('methods.levelled'), key: 'levelled' },
    ].map(({ figure, label, key }) =>
      toChartRow(
        { key: `${line.method} ${key}`, label, group: names.methodName(line.method), series: index },
        view(figure),
      ),
    ),
  );
  const overview = toldPairs(answer.pairs, words);
  const reckoned = answer.pairs.some(
    ({ would, yieldWould }) => would?.kind === 'batches' || yieldWould?.kind === 'batches',
  );
  const between = (first: string, second: string) =>
    t('methods.difference', { first: names.methodName(first), second: names.methodName(second) });
  return (
    <>
      {headline === undefined ? (
        <p className="answer-sentence">{t('fit.cannot')}</p>
      ) : (
        <>
          <p className="answer-sentence">{pairSentence(headline, words)}</p>
          {overview.length === 0 ? null : <p>{overview.join(' ')}</p>}
          {yieldSentences(headline, words).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p>{t('methods.next')}</p>
          <p className="quiet">
            {t('methods.trials')} <Link href="/trials">{t('methods.toTrials')}</Link>
          </p>
          <div className="figures">
            <Figure label={between(headline.first, headline.second)} view={view(headline.points)} />
          </div>
        </>
      )}
      <DotIntervalChart title={t('methods.chart')} reading={t('methods.chartReading')} unit="%" rows={rows} />
      <MethodsTable lines={methods} words={words} />
      {answer.pairs.length < 2 ? null : (
        <>
          <h2>{t('methods.pairsHeading')}</h2>
          <p>{t('methods.pairsNote')}</p>
          {answer.pairs.map((pair) => (
            <section key={`${pair.first} ${pair.second}`}>
              <h3>{between(pair.first, pair.second)}</h3>
              <p>{pairSentence(pair, words)}</p>
              {yieldSentences(pair, words).map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <FigureHistory view={view(pair.points)} />
            </section>
          ))}
        </>
      )}
      {reckoned ? <p className="quiet">{t('methods.wouldNote')}</p> : null}
      <h2>{t('methods.useHeading')}</h2>
      <MethodsUse answer={answer} words={words} />
      <MethodCurvesView answer={answer} words={words} />
    </>
  );
}
