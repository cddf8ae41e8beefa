import type { DecimalMark } from '@/lib/growing/condition-table-layout';

/** What loggers write where a sensor gave nothing. */
const nothing = /^(-+|nan|n\/?a|null|none|err(or)?|#n\/a|\*+)?$/i;
const unit = /\s*(°\s*[cf]|[cf]|%(\s*(rh|hr))?|ppm)$/i;

export function isNothing(cell: string): boolean {
  return nothing.test(cell.trim());
}

/** The number of a cell, its unit taken off; undefined where it is none by this decimal sign. */
export function readValue(cell: string, decimal: DecimalMark): number | undefined {
  const digits = cell
    .trim()
    .replace(unit, '')
    .replace(/[\s\u00a0\u202f]/g, '')
    .replace(/^−/, '-');
  const mark = decimal === 'comma' ? ',' : '.';
  if (!/^[+-]?\d+([.,]\d+)?$/.test(digits) || /[.,]/.test(digits.replace(mark, ''))) return undefined;
  return Number(digits.replace(',', '.'));
}
