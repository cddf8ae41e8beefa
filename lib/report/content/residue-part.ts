import type { Production } from '@/lib/analysis/production/read-production';
import { isResidue } from '@/lib/growing/residue-kinds';
import { amountPart } from './amount-part';
import { cellsOf } from './cells-of';
import type { ReportCell, ReportTable } from './funder-report';
import { type GroundSum, type GroundTables, groundSumOf } from './ground';
import { mayBeShown, type ProtectionRule } from './protect-cells';

export type ResiduePart = {
  readonly table: ReportTable;
  readonly known: readonly GroundSum[];
  /** What was grown on and is no residue, each kind a number of its own. */
  readonly leftOut: readonly ReportCell[];
  readonly ground: GroundTables;
};

/** Dry grams of residues by material, and of what is left out of them, protected. */
export function residuePart(rows: Production['residues'], rule: ProtectionRule): ResiduePart {
  const residues = amountPart(
    rows.filter(({ material }) => isResidue(material)),
    ({ material }) => material,
    rule,
  );
  const others = cellsOf(
    rows.filter(({ material, grams }) => !isResidue(material) && grams > 0),
    ({ material }) => material,
  ).map((cell) => ({ ...cell, shown: mayBeShown(cell.bySite, rule) }));
  return {
    table: residues.table,
    known: residues.known,
    leftOut: others.map(({ key, bySite, shown }) =>
      shown
        ? { key, kind: 'shown', amount: [...bySite.values()].reduce((a, b) => a + b, 0), sites: bySite.size }
        : { key, kind: 'protected' },
    ),
    ground: {
      residues: residues.known,
      leftOut: others.filter(({ shown }) => shown).map(({ key, bySite }) => groundSumOf(key, bySite)),
    },
  };
}
