import type { SpeciesHarvest } from '@/lib/analysis/production/read-species-harvest';
import { proteinOfHarvest } from '@/lib/growing/protein-of-harvest';
import { cellsOf } from './cells-of';
import type { FunderReportContent, ReportTable } from './funder-report';
import { protectBeside } from './protect-beside';
import type { ProtectedCell, ProtectionRule } from './protect-cells';

type Row = FunderReportContent['protein'][number];

function rangeOf(cell: ProtectedCell, speciesCode: string): Row['range'] {
  if (cell.kind === 'protected') return { kind: 'protected' };
  const protein = proteinOfHarvest(cell.amount, speciesCode);
  if (protein.kind !== 'value') return { kind: 'outside-table' };
  const { lowGrams, highGrams, byRule } = protein.value;
  return { kind: 'range', lowGrams, highGrams, ...(byRule === undefined ? {} : { byRule }) };
}

/** Protein by species; only of amounts that may be shown, since a range tells its amount. */
export function proteinRows(
  rows: readonly SpeciesHarvest[],
  harvest: ReportTable,
  rule: ProtectionRule,
): Row[] {
  const cells = protectBeside(
    harvest,
    cellsOf(rows, (row) => row.speciesCode),
    rule,
  );
  return cells.flatMap((fresh) => {
    const named = rows.find((row) => row.speciesCode === fresh.key);
    if (!named) return [];
    const { speciesEn, speciesEs } = named;
    return [{ speciesEn, speciesEs, fresh, range: rangeOf(fresh, fresh.key) }];
  });
}
