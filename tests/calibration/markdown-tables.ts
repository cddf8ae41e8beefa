import { type Cell, type CoverageRow, type LevelRow, RATES } from './calibration-row';
import { noisePercent } from './rejection-row';

/** Outside 93-97 % by more than the simulation's own noise. */
function misses({ coveredPercent, replicates, noAnswerPercent }: Cell): boolean {
  const noise = noisePercent(95, (replicates * (100 - noAnswerPercent)) / 100);
  return !(coveredPercent >= 93 - noise && coveredPercent <= 97 + noise);
}

function cellText(cell: Cell): string {
  if (Number.isNaN(cell.coveredPercent)) return 'no answer';
  const missing = cell.noAnswerPercent >= 0.5 ? ` (${cell.noAnswerPercent.toFixed(0)} % without)` : '';
  const mark = misses(cell) ? (cell.coveredPercent > 95 ? ' +' : ' **-**') : '';
  return `${cell.coveredPercent.toFixed(1)}${mark}${missing}`;
}

/** One table per method: clusters and correlation down, true rates across. */
export function coverageTables(rows: readonly CoverageRow[]): string {
  const methods = [...new Set(rows.map(({ method }) => method))];
  return methods
    .map((method) => {
      const own = rows.filter((row) => row.method === method);
      const cells = own.flatMap((row) => row.cells);
      const replicates = cells[0]?.replicates ?? 0;
      const low = cells.filter((cell) => misses(cell) && cell.coveredPercent < 95).length;
      const high = cells.filter((cell) => misses(cell) && cell.coveredPercent > 95).length;
      const lines = own.map(
        (row) => `| ${row.clusters} | ${row.correlation} | ${row.cells.map(cellText).join(' | ')} |`,
      );
      return [
        `### ${method}`,
        '',
        `Percent of 95 % intervals that hold the truth; ${replicates} data sets a cell. ${low} of ${cells.length} cells too low (**-**), ${high} too high (+).`,
        '',
        `| clusters | correlation | ${RATES.map((rate) => `true rate ${100 * rate} %`).join(' | ')} |`,
        `|${' --- |'.repeat(2 + RATES.length)}`,
        ...lines,
        '',
      ].join('\n');
    })
    .join('\n');
}

/** One table of settings for all tests, alarms and enumerated intervals. */
export function levelTable(title: string, rows: readonly LevelRow[]): string {
  const missed = rows.filter(({ holds }) => !holds).length;
  return [
    `### ${title}`,
    '',
    `${rows.length - missed} of ${rows.length} as stated.`,
    '',
    '| method | setting | stated | found | |',
    '| --- | --- | --- | --- | --- |',
    ...rows.map(
      ({ method, setting, stated, found, holds }) =>
        `| ${method} | ${setting} | ${stated} | ${found} | ${holds ? '' : 'differs'} |`,
    ),
    '',
  ].join('\n');
}
