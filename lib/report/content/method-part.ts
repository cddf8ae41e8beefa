import type { MethodFigures } from '@/lib/analysis/production/read-method-figures';
import type { SiteAmount } from '@/lib/analysis/production/read-production';
import { amountPart } from './amount-part';
import { cellsOf } from './cells-of';
import type { FunderReportContent } from './funder-report';
import { type GroundSum, knownSums } from './ground';
import type { ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';

const kept = { kind: 'protected' } as const;
const keyOf = ({ container, methodKey }: MethodFigures) => `${container} ${methodKey}`;

type Amounts = (row: MethodFigures) => readonly SiteAmount[];

/** Rows whose size may be told, as cells of one table: sizes beside the number of all batches must not tell of the rest. */
function shownRows(rows: readonly MethodFigures[], size: Amounts, counted: Amounts, rule: ProtectionRule) {
  const spread = (of: Amounts) =>
    rows.flatMap((row) => of(row).map((amount) => ({ ...amount, key: keyOf(row) })));
  const sizes = amountPart(spread(size), ({ key }) => key, rule);
  const shown = new Set(sizes.table.cells.filter(({ kind }) => kind === 'shown').map(({ key }) => key));
  const counts = cellsOf(spread(counted), ({ key }) => key).filter(({ key }) => shown.has(key));
  const all = { ...sizes.table, total: { key: 'total', kind: 'protected' } as const };
  return {
    shown,
    sizes: knownSums(all, sizes.cells),
    counts: counts.map(({ key, bySite }): GroundSum => ({ key, bySite: Object.fromEntries(bySite) })),
  };
}

/** Contamination and yield by method and container; yields of each container are cells of a table of their own. */
export function methodPart(
  figures: readonly MethodFigures[],
  rule: ProtectionRule,
): ReportPart<Pick<FunderReportContent, 'methods'>> {
  const losses = shownRows(
    figures,
    (row) => row.unitsBySite,
    (row) => row.contaminatedBySite,
    rule,
  );
  const containers = [...new Set(figures.map(({ container }) => container))];
  const yields = containers.map((container) => {
    const rows = figures.filter((row) => row.container === container);
    return {
      container,
      ...shownRows(
        rows,
        (row) => row.yieldBySite,
        (row) => row.freshBySite,
        rule,
      ),
    };
  });
  const yieldShown = (row: MethodFigures) =>
    yields.some(({ container, shown }) => container === row.container && shown.has(keyOf(row)));
  const ground: Record<string, readonly GroundSum[]> = { units: losses.sizes, contaminated: losses.counts };
  for (const { container, sizes, counts } of yields) {
    ground[`over ${container}`] = sizes;
    ground[`fresh ${container}`] = counts;
  }
  return {
    content: {
      methods: figures.map((row) => ({
        key: keyOf(row),
        container: row.container,
        methodEn: row.methodEn,
        methodEs: row.methodEs,
        contamination: losses.shown.has(keyOf(row)) ? row.contamination : kept,
        yield: yieldShown(row) ? row.yield : kept,
      })),
    },
    ground,
  };
}
