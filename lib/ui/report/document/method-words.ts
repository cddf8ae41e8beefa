import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import { formatNumber } from '../../format/number-text';
import type { ReportTongue } from './report-tongue';

type Row = FunderReportContent['methods'][number];
type Told = Extract<ShownFigure, { kind: 'figure' }>;

/** A percentage with limits, or nothing that can be said in one sentence. */
function percentOf(figure: Row['yield']): (Told & { interval: { kind: 'interval' } }) | undefined {
  if (figure.kind !== 'figure') return undefined;
  // Stored as the analysis made it; the report's schema has checked the kind.
  const told = figure as unknown as Told;
  return told.unit === 'percent' && told.interval.kind === 'interval'
    ? { ...told, interval: told.interval }
    : undefined;
}

/** What each method did, in plain sentences: of 100 units so many were lost; 100 kg of substrate gave so much. */
export function methodWords(rows: readonly Row[], { t, words, own, locale }: ReportTongue): string[] {
  return rows.flatMap((row) => {
    const losses = percentOf(row.contamination);
    const yields = percentOf(row.yield);
    const named = {
      method: own({ en: row.methodEn, es: row.methodEs }),
      container: words(`vocabulary.containerKind.${row.container}`).toLocaleLowerCase(locale),
    };
    const range = ({ value, interval }: NonNullable<typeof losses>) => ({
      value: formatNumber(value, locale, 0),
      low: formatNumber(interval.low, locale, 0),
      high: formatNumber(interval.high, locale, 0),
    });
    const said = [
      ...(losses ? [t('methodLost', range(losses))] : []),
      ...(yields ? [t('methodGave', range(yields))] : []),
    ];
    return said.length === 0 ? [] : [[t('methodNamed', named), ...said].join(' ')];
  });
}
