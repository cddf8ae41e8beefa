import { unescaped } from './shared-parts';

/** What stands of a cell in its sheet. */
export type RawCell = {
  readonly type: string;
  readonly style: number;
  readonly value: string;
  readonly inline: string;
};

export type CellReading = {
  readonly texts: readonly string[];
  readonly dates: readonly boolean[];
  readonly from1904: boolean;
};

/** Days from the one numbered 0 to 1970-01-01, a leap day counted that 1900 never had (ECMA-376 part 1, 18.17.4.1). */
const daysBefore1970 = 25_569;
const daysBefore1904 = 1_462;

function momentText(moment: Date): string {
  if (Number.isNaN(moment.getTime())) return '';
  const text = moment.toISOString();
  return text.endsWith('T00:00:00.000Z') ? text.slice(0, 10) : text.slice(0, 16).replace('T', ' ');
}

function numberText({ value, style }: RawCell, { dates, from1904 }: CellReading): string {
  const number = Number(value);
  if (value === '' || Number.isNaN(number)) return value;
  if (dates[style] !== true) return String(number);
  // A time of day alone is a part of a day, whatever days are counted from.
  const days = number + (from1904 && number >= 1 ? daysBefore1904 : 0) - daysBefore1970;
  // A time is a part of a day that no number tells exactly: to the second.
  return momentText(new Date(Math.round(days * 86_400) * 1_000)) || value;
}

/** A cell as text (18.3.1.4): numbers with a point, days as YYYY-MM-DD, whatever the workbook shows them as. */
export function cellText(cell: RawCell, reading: CellReading): string {
  switch (cell.type) {
    case 's': {
      const text = reading.texts[Number(cell.value)];
      if (text === undefined) throw new Error(`no text ${cell.value}`);
      return text;
    }
    case 'inlineStr':
      return unescaped(cell.inline);
    case 'b':
      return cell.value === '1' ? 'true' : cell.value === '0' ? 'false' : cell.value;
    case 'd':
      return momentText(new Date(cell.value)) || cell.value;
    case 'n':
      return numberText(cell, reading);
    default:
      return unescaped(cell.value);
  }
}
