/** Amounts of one cell by site. */
export type Cell = { readonly key: string; readonly bySite: ReadonlyMap<string, number> };

export type ProtectionRule = {
  /** Fewest sites behind a shown cell. */
  readonly minSites: number;
  /** The two largest sites together stay below this share, percent. */
  readonly topTwoPercent: number;
};

export type ProtectedCell = { readonly key: string } & (
  | { readonly kind: 'shown'; readonly amount: number; readonly sites: number }
  | { readonly kind: 'protected' }
);

function amounts(bySite: ReadonlyMap<string, number>): number[] {
  return [...bySite.values()].filter((amount) => amount > 0).sort((a, b) => b - a);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Whether an amount can be shown without telling about a single site: enough sites, and no two that make it up. */
export function mayBeShown(bySite: ReadonlyMap<string, number>, rule: ProtectionRule): boolean {
  const sorted = amounts(bySite);
  const total = sum(sorted);
  if (total === 0) return true;
  return sorted.length >= rule.minSites && (100 * sum(sorted.slice(0, 2))) / total < rule.topTwoPercent;
}

function together(cells: readonly Cell[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const cell of cells) {
    for (const [site, amount] of cell.bySite) sums.set(site, (sums.get(site) ?? 0) + amount);
  }
  return sums;
}

/**
 * Protects the cells of one additive table and its total. A cell that fails the rule is hidden; since a total minus
 * the shown cells tells the sum of the hidden ones, further cells are hidden, smallest first, until that sum itself
 * passes the rule. If it never does, the total is hidden too.
 * Thresholds: 5 sites and 85 % unless the network says otherwise (our choice, after the practice of farm survey
 * grids and table protection in official statistics).
 */
export function protectCells(
  cells: readonly Cell[],
  rule: ProtectionRule,
): { total: ProtectedCell; cells: ProtectedCell[] } {
  const hidden = new Set(cells.filter((cell) => !mayBeShown(cell.bySite, rule)).map((cell) => cell.key));
  const smallestFirst = [...cells].sort(
    (a, b) => sum(amounts(a.bySite)) - sum(amounts(b.bySite)) || a.key.localeCompare(b.key),
  );
  const hiddenCells = () => cells.filter((cell) => hidden.has(cell.key));
  for (const cell of smallestFirst) {
    if (hidden.size === 0 || mayBeShown(together(hiddenCells()), rule)) break;
    if (sum(amounts(cell.bySite)) > 0) hidden.add(cell.key);
  }
  const all = together(cells);
  const remainderTells = hidden.size > 0 && !mayBeShown(together(hiddenCells()), rule);
  const totalShown = mayBeShown(all, rule) && !remainderTells;
  const shown = (key: string, bySite: ReadonlyMap<string, number>): ProtectedCell => {
    const values = amounts(bySite);
    return { key, kind: 'shown', amount: sum(values), sites: values.length };
  };
  return {
    total: totalShown ? shown('total', all) : { key: 'total', kind: 'protected' },
    cells: cells.map((cell) =>
      hidden.has(cell.key) ? { key: cell.key, kind: 'protected' } : shown(cell.key, cell.bySite),
    ),
  };
}
