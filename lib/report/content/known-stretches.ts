import { addDays } from '@/lib/growing/calendar-date';
import type { BuiltReport } from './build-content';
import { type GroundPart, groundParts, hiddenKey } from './ground';
import { tellsPart } from './tells-part';
import { baselineTotals, periodTotal, sumOf, type ToldTotal, tableOf } from './told-totals';

/** A sum that readers know of a stretch of days, and what each site gave to it. */
export type KnownStretch = {
  readonly from: string;
  /** The day after its last. */
  readonly until: string;
  readonly bySite: Readonly<Record<string, number>>;
};

/** A stretch with the sum's name, alike in every report that tells it; `part` and `table` say where a report tells it. */
export type NamedStretch = KnownStretch & {
  readonly name: string;
  readonly part: GroundPart;
  readonly table: string;
};

type Days = { readonly from: string; readonly to: string };

const stretchOf = ({ from, to }: Days) => ({ from, until: addDays(to, 1) });
const totalName = (total: ToldTotal) => `total ${tableOf(total)}`;

/** Sums of the days of its period that a report tells: cells, and the totals of harvest, residues and sales. */
export function periodStretches(report: BuiltReport): NamedStretch[] {
  const { content, ground } = report;
  const days = stretchOf(content);
  const cells = groundParts
    .filter((part) => part !== 'baseline' && tellsPart(report, part))
    .flatMap((part) =>
      Object.entries(ground[part] ?? {})
        // Where a practice stands is a state at the end, no sum of days.
        .filter(([table]) => !table.startsWith('standing '))
        .flatMap(([table, sums]) =>
          sums
            .filter(({ key }) => key !== hiddenKey)
            .map(({ key, bySite }) => ({ ...days, bySite, part, table, name: `${part} ${table} ${key}` })),
        ),
    );
  const keys = [
    { key: 'harvest' },
    { key: 'residues' },
    ...content.sales.map(({ currency }) => ({ key: 'sales', currency })),
  ];
  const totals = keys.flatMap((key) => {
    const total = periodTotal(report, key);
    const sum = total && sumOf(total);
    if (!total || !sum) return [];
    const part: GroundPart = key.key === 'harvest' || key.key === 'residues' ? key.key : 'sales';
    return [{ ...days, bySite: sum.bySite, part, table: tableOf(total), name: totalName(total) }];
  });
  return [...cells, ...totals];
}

/** A total of its baseline that a report tells, as a stretch; undefined of one that is kept back. */
export function baselineStretch({ content }: BuiltReport, total: ToldTotal): NamedStretch | undefined {
  const sum = sumOf(total);
  if (!content.baseline || !sum) return undefined;
  return {
    ...stretchOf(content.baseline),
    ...{ bySite: sum.bySite, part: 'baseline', table: tableOf(total), name: totalName(total) },
  };
}

/** Everything that a report tells of stretches of days. */
export function knownStretches(report: BuiltReport): NamedStretch[] {
  const before = baselineTotals(report).flatMap((total) => baselineStretch(report, total) ?? []);
  return [...periodStretches(report), ...before];
}
