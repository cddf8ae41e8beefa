import { knownSums } from './ground';
import { type Cell, type ProtectedCell, type ProtectionRule, protectCells } from './protect-cells';
import { tellsFew } from './tells-few';

/**
 * Protects a second table of the same total, for instance the harvest by species beside the harvest by destination.
 * The two must agree on the total: where the first hides it the second would give it away, and where the second would
 * have to hide it the first has told it already. Nor may sums of the one less sums of the other tell of few sites. In
 * each of these cases the second tells nothing.
 */
export function protectBeside(
  first: { readonly total: ProtectedCell; readonly cells: readonly ProtectedCell[] },
  firstCells: readonly Cell[],
  cells: readonly Cell[],
  rule: ProtectionRule,
): { total: ProtectedCell; cells: ProtectedCell[] } {
  const second = protectCells(cells, rule);
  const agree = first.total.kind === 'shown' && second.total.kind === 'shown';
  const safe = agree && !tellsFew(knownSums(first, firstCells), knownSums(second, cells), rule, false);
  return safe
    ? second
    : {
        total: { key: 'total', kind: 'protected' },
        cells: cells.map(({ key }) => ({ key, kind: 'protected' })),
      };
}
