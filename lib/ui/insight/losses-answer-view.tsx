import type {
  LossesAnswer,
  LossSource,
  SourceShare,
  VariationPart,
} from '@/lib/analysis/loss-question/losses-answer';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import { FigureHistory } from '../figure/figure-history';
import { DefinitionList } from '../page/definition-list';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';
import { lossesSentences, sourcesToActOn, yieldSentence } from './losses-sentences';
import { littleAtMost, littleBelow, mattersLittle } from './share-words';
import { TellingExamplesView } from './telling-examples-view';

/** Where losses come from, in words; who stands out; a first step for each source; every share with its interval. */
export function LossesAnswerView({ answer, words }: { answer: LossesAnswer; words: InsightWords }) {
  const { t, number } = words;
  const steps = sourcesToActOn(answer);
  const noneOut = new Set<LossSource>(answer.noneOut.map(({ source }) => source));
  const [first, ...others] = lossesSentences(answer, words);
  return (
    <>
      <p className="answer-sentence">{first}</p>
      {others.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {answer.chanceRatio === null ? null : (
        <p>
          {t('losses.chance', {
            count: number(answer.typicalUnits),
            units: words.units,
            times: number(answer.chanceRatio, 1),
          })}
        </p>
      )}
      {answer.contamination.kind === 'cannot' ? null : (
        <>
          <h2>{t('losses.examplesHeading')}</h2>
          <TellingExamplesView examples={answer.examples} noneOut={answer.noneOut} words={words} />
        </>
      )}
      {steps.length === 0 ? null : (
        <>
          <h2>{t('losses.stepsHeading')}</h2>
          <DefinitionList
            items={steps.map((source) => ({
              label: t(`losses.row.${source}`),
              value: t(`losses.${noneOut.has(source) ? 'stepNoneOut' : 'step'}.${source}`),
            }))}
          />
        </>
      )}
      <Shares part={answer.contamination} of="contamination" words={words} />
      <h2>{t('losses.yieldHeading')}</h2>
      <p>{yieldSentence(answer.yield, words)}</p>
      <Shares part={answer.yield} of="yield" words={words} />
      <p className="quiet">{t('losses.note')}</p>
    </>
  );
}

type SharesProps = {
  readonly part: VariationPart;
  readonly of: 'contamination' | 'yield';
  readonly words: InsightWords;
};

function Shares({ part, of, words }: SharesProps) {
  const { t, view, number } = words;
  if (part.kind === 'cannot') return null;
  const shares = part.sources.flatMap((source) => (source.kind === 'share' ? [source] : []));
  const [any] = shares;
  const why = (source: SourceShare) =>
    source.kind === 'cannot'
      ? t(`losses.why.${source.reason}`, {
          other: source.sameAs === null ? '–' : t(`losses.source.${source.sameAs}`),
        })
      : mattersLittle(source)
        ? t('losses.mattersLittle', { high: littleAtMost(source, words) })
        : t(source.told ? 'losses.isTold' : 'losses.notTold');
  return (
    <>
      <DotIntervalChart
        title={t(`losses.chart.${of}`)}
        reading={t('losses.chartReading', { little: `${number(littleBelow)} %` })}
        unit="%"
        rows={shares.map((share, index) =>
          toChartRow(
            { key: share.source, label: t(`losses.row.${share.source}`), series: index },
            view(share.figure),
          ),
        )}
      />
      <DataTable
        caption={t(`losses.table.${of}`)}
        rows={part.sources}
        rowKey={({ source }) => source}
        columns={[
          {
            key: 'source',
            header: t('losses.columns.source'),
            cell: ({ source }) => t(`losses.row.${source}`),
          },
          {
            key: 'levels',
            header: t('losses.columns.levels'),
            numeric: true,
            cell: ({ source, levels }) => (source === 'rest' ? '–' : number(levels)),
          },
          {
            key: 'share',
            header: t('losses.columns.share'),
            unit: '%',
            numeric: true,
            cell: (source) =>
              source.kind === 'share' ? <FigureLink figure={source.figure} words={words} /> : '–',
          },
          { key: 'why', header: t('losses.columns.told'), cell: why },
        ]}
      />
      {any === undefined ? null : <FigureHistory view={view(any.figure)} />}
    </>
  );
}
