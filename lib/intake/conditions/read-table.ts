import { conditionLimits } from '@/lib/growing/condition-limits';
import type { ConditionTableLayout } from '@/lib/growing/condition-table-layout';
import { fahrenheitToCelsius } from '@/lib/growing/temperature-units';
import { type ConditionMeasure, conditionMeasures } from '@/lib/growing/vocabulary';
import { readMoment } from './read-moment';
import { isNothing, readValue } from './read-value';
import { splitTable } from './split-table';

/** One value: degrees Celsius, percent or parts per million, to a tenth. */
export type TableReading = { readonly at: Date; readonly measure: ConditionMeasure; readonly value: number };

/** Why a line cannot be read; `cell` is what stands there. */
export type TableProblem = {
  readonly line: number;
  readonly code: 'no-moment' | 'no-number' | 'out-of-range' | 'future';
  readonly cell: string;
};

export type ReadTable = {
  readonly readings: readonly TableReading[];
  readonly problems: readonly TableProblem[];
  /** Cells in which a sensor gave nothing. */
  readonly empty: number;
};

/** A logger's clock may run ahead; more than a day it does not. */
const aheadMilliseconds = 86_400_000;

/** Reads a whole table by a layout; every line is looked at, and one that cannot be read is a problem, never dropped. */
export function readTable(
  text: string,
  layout: ConditionTableLayout,
  timeZone: string,
  now: Date,
): ReadTable {
  const readings: TableReading[] = [];
  const problems: TableProblem[] = [];
  let empty = 0;
  const place = (role: ConditionTableLayout['columns'][number]) => layout.columns.indexOf(role);
  const measures = conditionMeasures.filter((measure) => place(measure) >= 0);
  for (const [index, row] of splitTable(text, layout.delimiter).entries()) {
    if (index < layout.linesBefore || row.every((cell) => cell === '')) continue;
    const line = index + 1;
    const cell = (role: ConditionTableLayout['columns'][number]) => row[place(role)] ?? '';
    const written = place('moment') >= 0 ? cell('moment') : `${cell('date')} ${cell('time')}`;
    const at = readMoment(written, layout.dateOrder, timeZone);
    if (at === undefined) {
      problems.push({ line, code: 'no-moment', cell: written.trim() });
      continue;
    }
    if (at.getTime() > now.getTime() + aheadMilliseconds) {
      problems.push({ line, code: 'future', cell: written.trim() });
      continue;
    }
    for (const measure of measures) {
      const typed = cell(measure);
      if (isNothing(typed)) {
        empty += 1;
        continue;
      }
      const number = readValue(typed, layout.decimal);
      if (number === undefined) {
        problems.push({ line, code: 'no-number', cell: typed });
        continue;
      }
      const fahrenheit = measure === 'temperature' && layout.temperatureUnit === 'fahrenheit';
      const value = Number((fahrenheit ? fahrenheitToCelsius(number) : number).toFixed(1));
      const { least, most } = conditionLimits[measure];
      if (value < least || value > most) problems.push({ line, code: 'out-of-range', cell: typed });
      else readings.push({ at, measure, value });
    }
  }
  return { readings, problems, empty };
}
