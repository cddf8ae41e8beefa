import { getLocale, getTranslations } from 'next-intl/server';
import type { ConditionTableLayout } from '@/lib/growing/condition-table-layout';
import { type ConditionMeasure, conditionMeasures } from '@/lib/growing/vocabulary';
import type { PlaceView } from '@/lib/records/condition/get-place.query';
import { formatInstant } from '../format/instant-text';
import type { TemperatureUnit } from '../format/temperature-text';
import type { LookedAt } from './import-state';
import { layoutFields, layoutValues } from './layout-fields';
import { measureText } from './measure-text';

type Look = {
  readonly text: string;
  readonly layout: ConditionTableLayout;
  readonly lines: readonly (readonly string[])[];
  readonly read: {
    readonly readings: readonly {
      readonly at: Date;
      readonly measure: ConditionMeasure;
      readonly value: number;
    }[];
    readonly problems: readonly {
      readonly line: number;
      readonly code: 'no-moment' | 'no-number' | 'out-of-range' | 'future';
      readonly cell: string;
    }[];
    readonly empty: number;
  };
  readonly place: PlaceView;
  readonly from: 'posted' | 'remembered' | 'guessed';
  readonly temperatureUnit: TemperatureUnit;
};

const linesShown = 5;
const problemsShown = 10;
const cellShown = 40;

/** What a table holds and how it was understood, in words. */
export async function lookedAt(look: Look): Promise<LookedAt> {
  const { text, layout, lines, read, place, from, temperatureUnit } = look;
  const t = await getTranslations('conditions.import');
  const words = await getTranslations('vocabulary.conditionMeasure');
  const locale = await getLocale();
  const { readings, problems, empty } = read;
  const when = (time: number) => formatInstant(new Date(time), place.site.timeZone, locale);
  const ends = (numbers: readonly number[]) =>
    numbers.reduce(({ low, high }, one) => ({ low: Math.min(low, one), high: Math.max(high, one) }), {
      low: numbers[0] ?? 0,
      high: numbers[0] ?? 0,
    });
  const span = ends(readings.map(({ at }) => at.getTime()));
  const spans = conditionMeasures.flatMap((measure) => {
    const values = readings.filter((one) => one.measure === measure).map(({ value }) => value);
    if (values.length === 0) return [];
    const { low, high } = ends(values);
    const told = (value: number) => measureText(measure, value, temperatureUnit, locale);
    return [t('span', { measure: words(measure), low: told(low), high: told(high) })];
  });
  const header = lines[layout.linesBefore - 1] ?? [];
  const names = layout.columns.map((_role, index) => header[index] || String(index + 1));
  const columns = names.map((name, index) => ({ key: `columns.${index}`, name }));
  return {
    text,
    fields: await layoutFields(names),
    values: layoutValues(layout),
    columns,
    rows: lines.slice(layout.linesBefore, layout.linesBefore + linesShown).map((line, index) => ({
      key: String(layout.linesBefore + index + 1),
      cells: Object.fromEntries(columns.map(({ key }, at) => [key, line[at] ?? ''])),
    })),
    found: [
      readings.length === 0
        ? t('none')
        : t('count', {
            count: readings.length,
            from: when(span.low),
            to: when(span.high),
            site: place.site.name,
          }),
      ...spans,
      ...(empty === 0 ? [] : [t('empty', { count: empty })]),
      ...(from === 'posted' ? [] : [t(from)]),
    ],
    problems: [
      ...problems
        .slice(0, problemsShown)
        .map(({ line, code, cell }) => t(`problem.${code}`, { line, cell: cell.slice(0, cellShown) })),
      ...(problems.length > problemsShown
        ? [t('moreProblems', { count: problems.length - problemsShown })]
        : []),
    ],
  };
}
