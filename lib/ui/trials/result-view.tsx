import { getLocale, getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { dateInZone } from '@/lib/growing/calendar-date';
import { trialDepartures } from '@/lib/growing/trial-departure';
import type { TrialResultContent } from '@/lib/report/trial/trial-result-content';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import { Figure } from '../figure/figure';
import { loadFigureViews } from '../figure/load-figure-views';
import { formatDate } from '../format/date-text';
import { formatNumber } from '../format/number-text';
import { sentenceCase } from '../format/sentence-case';
import { asInside } from '../insight/next-names';
import { ComparisonTable } from './comparison-table';
import { contrastSentences } from './contrast-sentences';

type Props = { readonly content: TrialResultContent; readonly actor: Actor };

/** One page that says what a trial found, how, and how sure: the answer first, then the evidence. */
export async function ResultView({ content, actor }: Props) {
  const t = await getTranslations('trials');
  const locale = await getLocale();
  const view = await loadFigureViews(actor.networkTimeZone, actor.massUnit);
  const { answer, outcome, arms } = content;
  // Stored as the analysis made them; the schema checks only that each is a figure.
  const shown = (figure: { kind: string }) => view(figure as ShownFigure);
  const day = (instant: string) => formatDate(dateInZone(new Date(instant), actor.networkTimeZone), locale);
  const number = (value: number) => formatNumber(value, locale, Number.isInteger(value) ? 0 : 1);
  const label = (armId: string) => arms.find(({ id }) => id === armId)?.label ?? '–';
  const agrees = answer.asDrawn.contrasts.every(
    ({ verdict }, index) => answer.asPlanned.contrasts[index]?.verdict === verdict,
  );
  return (
    <>
      {(await contrastSentences(content)).map((sentence) => (
        <p key={sentence} className="answer-sentence">
          {sentence}
        </p>
      ))}
      <p>{t(agrees ? 'result.agrees' : 'result.differs')}</p>
      <DotIntervalChart
        title={t('result.chart')}
        reading={t(`result.chartReading.${outcome}`)}
        unit="%"
        rows={answer.asDrawn.arms.map(({ armId, figure }) =>
          toChartRow({ key: armId, label: label(armId) }, shown(figure)),
        )}
      />
      <ComparisonTable which="asDrawn" content={content} shown={shown} />
      <ComparisonTable which="asPlanned" content={content} shown={shown} />
      {answer.asDrawn.contrasts.map(({ armId, points }) => (
        <Figure key={armId} label={`${label(armId)} – ${arms[0]?.label ?? ''}`} view={shown(points)} />
      ))}
      <h2>{t('result.whatHeading')}</h2>
      <p>
        {t('result.design', {
          arms: arms.length,
          sites: content.sites,
          blocks: content.blocks,
          units: content.unitsPerRun,
          species: asInside(actor.language === 'es' ? content.speciesEs : content.speciesEn),
          seed: content.seed,
          way: content.differencePoints < 0 ? 'less' : 'more',
          difference: number(Math.abs(content.differencePoints)),
          expected: number(content.expectedPercent),
          power: content.powerPercent,
        })}
      </p>
      <p>
        {t('result.when', { from: day(content.startedAt), to: day(content.endedAt), note: content.endNote })}
      </p>
      <p>{t('result.made', { made: content.made, planned: content.planned })}</p>
      <h3>{t('result.departures')}</h3>
      {content.departures.length === 0 ? <p>{t('result.noDepartures')}</p> : null}
      <ul>
        {trialDepartures.flatMap((kind) => {
          const found = content.departures.find((one) => one.kind === kind);
          if (found === undefined) return [];
          const line = t('result.departureLine', { kind: t(`departure.${kind}`), runs: found.runs });
          return [<li key={kind}>{sentenceCase(line)}</li>];
        })}
      </ul>
      {content.notes.length === 0 ? null : (
        <>
          <h3>{t('note.list')}</h3>
          <ul>
            {content.notes.map(({ notedAt, note }) => (
              <li key={notedAt}>
                {day(notedAt)}: {note}
              </li>
            ))}
          </ul>
        </>
      )}
      <p className="quiet">{t('result.how')}</p>
    </>
  );
}
