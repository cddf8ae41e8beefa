import type { BuiltReport } from './build-content';
import { knownStretches, periodStretches } from './known-stretches';
import { stretchTells } from './stretch-tells';
import { tellsPart } from './tells-part';

/**
 * Kinds left out of the residues whose amount tells of few sites beside what readers have of any stretches of days. Reports
 * built before residues were told apart hold the same kind among their residues.
 */
export function leftOutThatTell(built: BuiltReport, earlier: readonly BuiltReport[]): Set<string> {
  if (!tellsPart(built, 'residues')) return new Set();
  const known = earlier.flatMap(knownStretches);
  const own = periodStretches(built).filter(({ table }) => table === 'leftOut');
  return new Set(
    own
      .filter((stretch) => {
        const asResidue = stretch.name.replace(' leftOut ', ' residues ');
        const alike = known.filter(({ name }) => name === stretch.name || name === asResidue);
        return stretchTells(stretch, alike, built.content.rule);
      })
      .map(({ name }) => name.slice('residues leftOut '.length)),
  );
}

/** A report that keeps these amounts back. */
export function withoutLeftOut({ content, ground }: BuiltReport, kinds: ReadonlySet<string>): BuiltReport {
  if (kinds.size === 0) return { content, ground };
  return {
    content: {
      ...content,
      residuesLeftOut: content.residuesLeftOut?.map((cell) =>
        kinds.has(cell.key) ? { key: cell.key, kind: 'protected' } : cell,
      ),
    },
    ground: {
      ...ground,
      residues: {
        ...ground.residues,
        leftOut: (ground.residues?.leftOut ?? []).filter(({ key }) => !kinds.has(key)),
      },
    },
  };
}
