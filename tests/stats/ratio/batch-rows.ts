import fc from 'fast-check';

export type BatchRow = { fresh: number; dry: number; site: string; method: string };

/** Batches of up to four sites and three methods, total losses and rows without dry mass among them. */
export const batchRows = fc.array(
  fc.record({
    fresh: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 9000 })),
    dry: fc.oneof({ arbitrary: fc.integer({ min: 100, max: 8000 }), weight: 8 }, fc.constant(0)),
    site: fc.constantFrom('Alder', 'Birch', 'Cedar', 'Dogwood'),
    method: fc.constantFrom('cold lime', 'hot water', 'steam'),
  }),
  { minLength: 1, maxLength: 20 },
);

export function columns(rows: readonly BatchRow[]) {
  return {
    numerator: rows.map(({ fresh }) => fresh),
    denominator: rows.map(({ dry }) => dry),
    cluster: rows.map(({ site }) => site),
    domain: rows.map(({ method }) => method),
    level: 0.95,
  };
}

/** Reversed, every batch recorded in two halves, and the sites given other names. */
export function rearranged(rows: readonly BatchRow[]): BatchRow[] {
  return rows.toReversed().flatMap((row) => {
    const half = { ...row, fresh: row.fresh / 2, dry: row.dry / 2, site: `${row.site} Growers` };
    return [half, half];
  });
}

export function inKilograms(rows: readonly BatchRow[]): BatchRow[] {
  return rows.map((row) => ({ ...row, fresh: row.fresh / 1000, dry: row.dry / 1000 }));
}
