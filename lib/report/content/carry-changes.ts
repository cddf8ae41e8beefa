import { baselineTotalTells } from './baseline-tells';
import type { BuiltReport } from './build-content';
import type { EarlierReport } from './carry-over';
import { changeRow } from './change-rows';
import type { FunderReportContent } from './funder-report';
import { saidKept } from './keep-back';
import { baselineTotals, type ToldTotal, tableOf, totalCell, totalsOver } from './told-totals';

const nothing = { key: 'total', kind: 'shown', amount: 0, sites: 0 } as const;
const kept = { key: 'total', kind: 'protected' } as const;

/** Whether two reports hold the same materials to be residues: those built before counted logs and spent substrate. */
const countsAlike = (one: FunderReportContent, other: FunderReportContent) =>
  (one.residuesLeftOut === undefined) === (other.residuesLeftOut === undefined);

/** Totals of the baseline that stand beside those of the period; of each currency that either of them has sales in. */
function totalsBefore(built: BuiltReport): ToldTotal[] {
  const before = baselineTotals(built);
  const sold = built.content.sales.map(({ currency }) => currency);
  const soldBefore = ({ cell }: ToldTotal) => cell.kind === 'protected' || cell.amount > 0;
  const there = before.filter(
    (total) => total.currency === undefined || sold.includes(total.currency) || soldBefore(total),
  );
  const added = sold
    .filter((currency) => !there.some((total) => total.currency === currency))
    .map((currency): ToldTotal => ({ key: 'sales', currency, cell: nothing, known: [] }));
  const ofSales = [...there, ...added].filter(({ key }) => key === 'sales');
  return [
    ...there.filter(({ key }) => key !== 'sales'),
    ...ofSales.sort((a, b) => (a.currency ?? '').localeCompare(b.currency ?? '')),
  ];
}

/**
 * The changes of a report whose other parts are settled. A total of the baseline that would tell of few sites beside what
 * readers have of those days stands as they have it from the latest report that told it. Residues are put beside residues counted
 * by the same rule, or kept back.
 *
 * @param fresh the content as it was built, before parts of it were made to stand as published before.
 */
export function carryChanges(
  built: BuiltReport,
  earlier: readonly EarlierReport[],
  fresh: FunderReportContent,
): BuiltReport {
  const { content, ground } = built;
  const { baseline } = ground;
  if (content.changes.length === 0 || baseline === undefined) return built;
  const rows = totalsBefore(built).map((total) => {
    const isAlike = (one: FunderReportContent) => total.key !== 'residues' || countsAlike(one, content);
    if (isAlike(fresh) && !baselineTotalTells(total, built, earlier)) return { total, version: undefined };
    const source = earlier
      .filter((one) => isAlike(one.content))
      .flatMap((one) =>
        totalsOver(content.baseline, one, total).map((told) => ({ total: told, version: one.version })),
      )
      .at(0);
    return source ?? { total: { ...total, cell: kept, known: [] }, version: undefined, held: true };
  });
  const held = rows.some((row) => 'held' in row && row.total.cell.kind === 'protected');
  const version = rows.find((row) => row.version !== undefined)?.version;
  return {
    content: {
      ...(held ? saidKept(content, 'baseline') : content),
      changes: rows.map(({ total: { key, currency, cell } }) => ({
        ...changeRow(key, cell, totalCell(content, { key, currency })),
        ...(currency === undefined ? {} : { currency }),
      })),
      carried: { ...content.carried, ...(version === undefined ? {} : { baseline: version }) },
    },
    ground: {
      ...ground,
      baseline: {
        ...baseline,
        ...Object.fromEntries(rows.map(({ total }) => [tableOf(total), total.known])),
      },
    },
  };
}
