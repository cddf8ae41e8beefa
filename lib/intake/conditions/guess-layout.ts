import type { ConditionTableLayout, DateOrder, DecimalMark } from '@/lib/growing/condition-table-layout';
import { guessColumns } from './guess-columns';
import { type DateParts, dateInOrder, dateParts, onlyOrder } from './read-moment';
import { isNothing, readValue } from './read-value';
import { guessDelimiter, splitTable } from './split-table';

const sampleLines = 400;

function guessDecimal(rows: readonly (readonly string[])[]): DecimalMark {
  const numbers = rows.flat().filter((cell) => dateParts(cell) === undefined && !cell.includes(':'));
  const commas = numbers.filter((cell) => cell.includes(',') && readValue(cell, 'comma') !== undefined);
  const points = numbers.filter((cell) => cell.includes('.') && readValue(cell, 'point') !== undefined);
  return commas.length > points.length ? 'comma' : 'point';
}

/** The order in which every date reads; of several, the one by which readings follow each other most closely. */
function guessOrder(dates: readonly DateParts[], usual: DateOrder): DateOrder {
  const told = dates.map(onlyOrder).find((order) => order !== undefined);
  if (told !== undefined) return told;
  const orders: readonly DateOrder[] = usual === 'dmy' ? ['dmy', 'mdy', 'ymd'] : [usual, 'dmy', 'ymd'];
  const fits = orders.flatMap((order) => {
    const days = dates.map(({ parts }) => dateInOrder(parts, order));
    const known = days.filter((day) => day !== undefined);
    if (known.length < days.length || known.length === 0) return [];
    const times = known.map((day) => Date.parse(`${day}T00:00:00Z`));
    return [{ order, span: Math.max(...times) - Math.min(...times) }];
  });
  const [first] = fits;
  return first === undefined
    ? usual
    : fits.reduce((best, next) => (next.span < best.span ? next : best), first).order;
}

/**
 * Guesses how a table is written from its first lines. `usualOrder`: of dates that read both ways, the order of the
 * reader's region.
 */
export function guessLayout(text: string, usualOrder: DateOrder): ConditionTableLayout {
  const delimiter = guessDelimiter(text);
  const lines = splitTable(text, delimiter).slice(0, sampleLines);
  const isReading = (row: readonly string[]) =>
    row.some((cell) => dateParts(cell) !== undefined) &&
    row.some((cell) => !cell.includes(':') && /\d/.test(cell) && dateParts(cell) === undefined);
  const linesBefore = Math.max(0, lines.findIndex(isReading));
  const rows = lines.slice(linesBefore).filter(isReading);
  const header = lines[linesBefore - 1] ?? [];
  const names = header.filter((cell) => cell !== '').length > 1 ? header : [];
  const decimal = guessDecimal(rows);
  const columns = guessColumns(names, rows, decimal);
  const dates = rows.flatMap((row) => row.map(dateParts).find((found) => found !== undefined) ?? []);
  const warm = columns.indexOf('temperature');
  const name = names[warm] ?? '';
  const values = rows.flatMap((row) => readValue(row[warm] ?? '', decimal) ?? []);
  const middle = values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  const written = `${name} ${rows.map((row) => row[warm] ?? '').find((cell) => !isNothing(cell)) ?? ''}`;
  const fahrenheit = /°\s*f|\(\s*f\s*\)|fahrenheit|\d\s*f$/i.test(written);
  const celsius = /°\s*c|\(\s*c\s*\)|celsius|\d\s*c$/i.test(written);
  return {
    delimiter,
    decimal,
    dateOrder: guessOrder(dates, usualOrder),
    // No place for growing is above 45 C most of the time.
    temperatureUnit: fahrenheit || (!celsius && middle > 45) ? 'fahrenheit' : 'celsius',
    linesBefore,
    columns,
  };
}
