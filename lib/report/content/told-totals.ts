import type { BuiltReport } from './build-content';
import type { FunderReportContent, ReportCell } from './funder-report';
import { type GroundSum, groundSumOf } from './ground';
import { salesTotal } from './sales-part';
import { samePeriod } from './same-period';
import { unionOf } from './tells-few';
import { tellsPart } from './tells-part';

type Row = FunderReportContent['changes'][number];
type Days = { readonly from: string; readonly to: string };
type Totals = Pick<FunderReportContent, 'harvest' | 'residues' | 'sales'>;

/** Which total: harvest, residues, or the sales of one currency. */
export type TotalKey = { readonly key: string; readonly currency?: string | undefined };

/** A total that a report tells, and the known sums of its table. */
export type ToldTotal = TotalKey & { readonly cell: ReportCell; readonly known: readonly GroundSum[] };

export const sameTotal = (one: TotalKey, other: TotalKey) =>
  one.key === other.key && one.currency === other.currency;

/** Name of a total's table in a ground. */
export const tableOf = ({ key, currency }: TotalKey) =>
  currency === undefined ? key : `${currency} outlets`;

/** The cell of a total of a report's own period. */
export function totalCell({ harvest, residues, sales }: Totals, { key, currency }: TotalKey): ReportCell {
  if (currency !== undefined) return salesTotal(sales, currency);
  return key === 'harvest' ? harvest.total : residues.total;
}

/** Totals of its baseline that a report tells; none of one published before grounds were kept. */
export function baselineTotals({ content, ground: { baseline } }: BuiltReport): ToldTotal[] {
  if (baseline === undefined) return [];
  return content.changes.map(({ key, currency, before }: Row) => ({
    ...{ key, currency, cell: before },
    known: baseline[tableOf({ key, currency })] ?? [],
  }));
}

/** A total of its own period, where a report tells it. */
export function periodTotal(report: BuiltReport, total: TotalKey): ToldTotal | undefined {
  const part = total.key === 'harvest' || total.key === 'residues' ? total.key : 'sales';
  if (!tellsPart(report, part)) return undefined;
  const { key, currency } = total;
  const known = report.ground[part]?.[tableOf(total)] ?? [];
  return { key, currency, cell: totalCell(report.content, total), known };
}

type SameDays = (one: Days | undefined, other: Days | undefined) => boolean;

/** A total of some days as a report tells it: as its baseline, or as its own period. `same`: which days count as these. */
export function totalsOver(
  days: Days | undefined,
  report: BuiltReport,
  total: TotalKey,
  same: SameDays = samePeriod,
): ToldTotal[] {
  const { content } = report;
  const baseline = same(content.baseline, days)
    ? baselineTotals(report).find((one) => sameTotal(one, total))
    : undefined;
  const own = same(content, days) ? periodTotal(report, total) : undefined;
  return [baseline, own].filter((one) => one !== undefined);
}

/** What a shown total was made of; undefined of a protected one. */
export const sumOf = ({ cell, known }: ToldTotal): GroundSum | undefined =>
  cell.kind === 'shown' ? groundSumOf('total', unionOf(known)) : undefined;
