import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';
import type { ProtectionRule } from './protect-cells';
import { samePeriod } from './same-period';
import { sameSum, tellsFew } from './tells-few';
import { tellsPart } from './tells-part';
import { baselineTotals, periodTotal, sumOf, type ToldTotal, totalsOver } from './told-totals';

/** Whether two states of one total, subtracted, leave what few sites did. */
function statesTell(one: ToldTotal, other: ToldTotal, rule: ProtectionRule): boolean {
  const [first, second] = [sumOf(one), sumOf(other)];
  return first !== undefined && second !== undefined && tellsFew([first], [second], rule, true);
}

/** Whether a total of a baseline tells of few sites beside a report over those days: beside its total, and its cells. */
function tellsBesidePeriod(total: ToldTotal, report: BuiltReport, rule: ProtectionRule): boolean {
  const [sum, own] = [sumOf(total), periodTotal(report, total)];
  if (sum === undefined || own === undefined) return false;
  const tables = [own.known, total.key === 'harvest' ? (report.ground.protein?.species ?? []) : []];
  return statesTell(total, own, rule) || tables.some((table) => tellsFew(table, [sum], rule, false));
}

/** Parts of a report that tell of few sites beside the baseline of another, which is its period. */
export function partsBesideBaseline(other: BuiltReport, built: BuiltReport): GroundPart[] {
  const { rule } = built.content;
  if (!samePeriod(other.content.baseline, built.content)) return [];
  return baselineTotals(other)
    .filter((total) => tellsBesidePeriod(total, built, rule))
    .flatMap(({ key }): GroundPart[] => {
      if (key === 'residues' || key === 'sales') return [key];
      return (['harvest', 'protein'] as const).filter((part) => tellsPart(built, part));
    });
}

/**
 * Whether a total of the baseline of `built` tells of few sites beside what readers have: the baseline of another report,
 * or a report over those days. One that stands as a reader has it already tells nothing new.
 */
export function baselineTotalTells(
  total: ToldTotal,
  { content: { baseline, rule } }: BuiltReport,
  earlier: readonly BuiltReport[],
): boolean {
  const told = earlier.flatMap((one) => totalsOver(baseline, one, total));
  const sum = sumOf(total);
  const known = told.flatMap((one) => sumOf(one) ?? []);
  if (sum === undefined || known.some((one) => sameSum(one, sum))) return false;
  return (
    told.some((one) => statesTell(one, total, rule)) ||
    earlier.some((one) => samePeriod(one.content, baseline) && tellsBesidePeriod(total, one, rule))
  );
}
