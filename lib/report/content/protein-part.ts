import type { SpeciesHarvest } from '@/lib/analysis/production/read-species-harvest';
import { proteinOfHarvest } from '@/lib/growing/protein-of-harvest';
import type { AmountPart } from './amount-part';
import { cellsOf } from './cells-of';
import type { FunderReportContent } from './funder-report';
import { knownSums } from './ground';
import { protectBeside } from './protect-beside';
import type { ProtectedCell, ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';

type Row = FunderReportContent['protein'][number];

function rangeOf(cell: ProtectedCell, speciesCode: string): Row['range'] {
  if (cell.kind === 'protected') return { kind: 'protected' };
  const protein = proteinOfHarvest(cell.amount, speciesCode);
  if (protein.kind !== 'value') return { kind: 'outside-table' };
  const { lowGrams, highGrams, byRule } = protein.value;
  return { kind: 'range', lowGrams, highGrams, ...(byRule === undefined ? {} : { byRule }) };
}

/** Protein by species; only of amounts that may be shown, since a range tells its amount. */
export function proteinPart(
  rows: readonly SpeciesHarvest[],
  harvest: AmountPart,
  rule: ProtectionRule,
): ReportPart<{ protein: Row[] }> {
  const cells = cellsOf(rows, (row) => row.speciesCode);
  const table = protectBeside(harvest.table, harvest.cells, cells, rule);
  const protein = table.cells.flatMap((fresh) => {
    const named = rows.find((row) => row.speciesCode === fresh.key);
    if (!named) return [];
    const { speciesEn, speciesEs } = named;
    return [{ speciesEn, speciesEs, fresh, range: rangeOf(fresh, fresh.key) }];
  });
  return { content: { protein }, ground: { species: knownSums(table, cells) } };
}
