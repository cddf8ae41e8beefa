import { ArgumentError } from '../../outcome';
import type { CodedFixed } from './code-fixed';
import type { NewRow } from './fixed-term';

/** Fills the design's columns for the given rows (numbers into the coded data). */
export function designColumns(fixed: CodedFixed, rows: Int32Array): Float64Array[] {
  return fixed.columns.map((column) => {
    const values = new Float64Array(rows.length).fill(1);
    for (const { factor, level } of column.indicators) {
      const codes = fixed.factors[factor]?.codes as Int32Array;
      for (let i = 0; i < rows.length; i++) if (codes[rows[i] as number] !== level) values[i] = 0;
    }
    for (const covariate of column.covariates) {
      const source = fixed.covariates[covariate]?.values as Float64Array;
      for (let i = 0; i < rows.length; i++) {
        values[i] = (values[i] as number) * (source[rows[i] as number] as number);
      }
    }
    return values;
  });
}

/**
 * The design's columns for one new row.
 *
 * @throws ArgumentError when the row lacks a term, or names a level that the model does not know.
 */
export function designRow(fixed: Omit<CodedFixed, 'rowCount'>, row: NewRow): Float64Array {
  const codes = fixed.factors.map(({ name, levels }) => {
    const code = levels.indexOf(String(row[name]));
    if (code < 0) throw new ArgumentError(`row.${name}`, `"${row[name]}" is no level of this factor`);
    return code;
  });
  const numbers = fixed.covariates.map(({ name }) => {
    const value = row[name];
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new ArgumentError(`row.${name}`, 'must be a finite number');
    }
    return value;
  });
  return Float64Array.from(fixed.columns, (column) =>
    column.indicators.some(({ factor, level }) => codes[factor] !== level)
      ? 0
      : column.covariates.reduce((product, covariate) => product * (numbers[covariate] as number), 1),
  );
}
