import { type Cell, type ProtectedCell, type ProtectionRule, protectCells } from './protect-cells';

/**
 * Protects a second table of the same total, for instance the harvest by species beside the harvest by destination.
 * The two must agree on the total: where the first hides it the second would give it away, and where the second would
 * have to hide it the first has told it already. In both cases the second tells nothing.
 */
export function protectBeside(
  first: { readonly total: { readonly kind: 'shown' | 'protected' } },
  cells: readonly Cell[],
  rule: ProtectionRule,
): ProtectedCell[] {
  const second = protectCells(cells, rule);
  const agree = first.total.kind === 'shown' && second.total.kind === 'shown';
  return agree ? second.cells : cells.map(({ key }) => ({ key, kind: 'protected' }));
}
