import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';
import type { ToldTable } from './hide-cells';
import { tellsPart } from './tells-part';

/** Parts that are one additive table of cells. */
export const tableParts = ['harvest', 'protein', 'residues'] as const satisfies readonly GroundPart[];
export type TablePart = (typeof tableParts)[number];

const isProtected = { kind: 'protected' as const };

/** The table of a part with what its readers know by it; undefined where the report does not tell the part. */
export function toldTable(report: BuiltReport, part: TablePart): ToldTable | undefined {
  const { content, ground } = report;
  if (!tellsPart(report, part)) return undefined;
  if (part === 'residues') return { table: content.residues, known: ground.residues?.residues ?? [] };
  if (part === 'harvest') return { table: content.harvest, known: ground.harvest?.harvest ?? [] };
  const cells = content.protein.map(({ fresh }) => fresh);
  return { table: { total: content.harvest.total, cells }, known: ground.protein?.species ?? [] };
}

/** A report with another table of a part. */
export function withTable(
  { content, ground }: BuiltReport,
  part: TablePart,
  { table, known }: ToldTable,
): BuiltReport {
  if (part === 'residues')
    return {
      content: { ...content, residues: table },
      ground: { ...ground, residues: { ...ground.residues, residues: known } },
    };
  if (part === 'harvest')
    return { content: { ...content, harvest: table }, ground: { ...ground, harvest: { harvest: known } } };
  const protein = content.protein.map((row) => {
    const fresh = table.cells.find(({ key }) => key === row.fresh.key) ?? row.fresh;
    return fresh.kind === 'shown' ? row : { ...row, fresh, range: isProtected };
  });
  return { content: { ...content, protein }, ground: { ...ground, protein: { species: known } } };
}
