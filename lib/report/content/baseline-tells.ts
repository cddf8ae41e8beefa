import { baselineStretchTells } from './beside-stretches';
import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';
import type { ProtectionRule } from './protect-cells';
import { samePeriod } from './same-period';
import { sharesDays } from './shares-days';
import { sameSum, tellsFew } from './tells-few';
import { tellsPart } from './tells-part';
import { baselineTotals, periodTotal, sumOf, type ToldTotal, type TotalKey, totalsOver } from './told-totals';

/**
 * Whether two states of one total, or the totals of two stretches that share days, subtracted, leave what few sites did. Of
 * two stretches what is left is what each site did on the days that only one of them has.
 */
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

/** The parts of a report that tell a total. */
function partsOf({ key }: TotalKey, built: BuiltReport): GroundPart[] {
  if (key === 'residues' || key === 'sales') return [key];
  return (['harvest', 'protein'] as const).filter((part) => tellsPart(built, part));
}

/** Parts of a report that tell of few sites beside the baseline of another, which shares days with its period. */
export function partsBesideBaseline(other: BuiltReport, built: BuiltReport): GroundPart[] {
  const { rule } = built.content;
  if (!sharesDays(other.content.baseline, built.content)) return [];
  return baselineTotals(other)
    .filter((total) => tellsBesidePeriod(total, built, rule))
    .flatMap((total) => partsOf(total, built));
}

/** Parts of a report that tell of few sites beside another whose period shares days with its own and is not the same. */
export function partsBesidePeriod(other: BuiltReport, built: BuiltReport): GroundPart[] {
  const { rule, sales } = built.content;
  if (!sharesDays(other.content, built.content) || samePeriod(other.content, built.content)) return [];
  const keys: TotalKey[] = [
    { key: 'harvest' },
    { key: 'residues' },
    ...sales.map(({ currency }) => ({ key: 'sales', currency })),
  ];
  return keys
    .filter((key) => {
      const [own, theirs] = [periodTotal(built, key), periodTotal(other, key)];
      if (own === undefined || theirs === undefined) return false;
      return (
        tellsBesidePeriod(own, other, rule) ||
        tellsBesidePeriod(theirs, built, rule) ||
        own.known.some((sum) =>
          theirs.known.some((known) => known.key === sum.key && tellsFew([known], [sum], rule, true)),
        )
      );
    })
    .flatMap((key) => partsOf(key, built));
}

/**
 * Whether a total of the baseline of `built` tells of few sites beside what readers have of those days or of others that share
 * some of them: the baseline of another report, or a report over them. One that stands as a reader has it of the same days
 * already tells nothing new.
 */
export function baselineTotalTells(
  total: ToldTotal,
  built: BuiltReport,
  earlier: readonly BuiltReport[],
): boolean {
  const { baseline, rule } = built.content;
  const sum = sumOf(total);
  const known = earlier.flatMap((one) => totalsOver(baseline, one, total)).flatMap((one) => sumOf(one) ?? []);
  if (sum === undefined || known.some((one) => sameSum(one, sum))) return false;
  const near = earlier.flatMap((one) => totalsOver(baseline, one, total, sharesDays));
  return (
    baselineStretchTells(total, built, earlier) ||
    near.some((one) => statesTell(one, total, rule)) ||
    earlier.some((one) => sharesDays(one.content, baseline) && tellsBesidePeriod(total, one, rule))
  );
}
