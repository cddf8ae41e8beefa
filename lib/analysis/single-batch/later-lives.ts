/** Units that a later life took from one batch. `dryGrams` is that of the whole batch they came from. */
export type LifeSource = {
  readonly batchId: string;
  readonly units: number;
  readonly unitCount: number;
  readonly dryGrams: number | null;
};

/** A second life, or a third: what was picked from it, and all the batches its units came from. */
export type LaterLife = {
  readonly batchId: string;
  readonly freshGrams: number;
  readonly open: boolean;
  readonly sources: readonly LifeSource[];
};

export type LaterYield = {
  /** Fresh grams of all later lives that are owed to the first batch. */
  readonly grams: number;
  /** Whether some later life gathered units of other batches too, so that its mass was shared out. */
  readonly shared: boolean;
  readonly anyOpen: boolean;
};

/** Parts of a later life's mass by source: by dry mass moved where all are known, else by units moved. */
function shares(sources: readonly LifeSource[]): ReadonlyMap<string, number> {
  const dry = sources.map(({ units, unitCount, dryGrams }) =>
    dryGrams === null ? null : (dryGrams * units) / unitCount,
  );
  const known = dry.every((grams) => grams !== null && grams > 0);
  const weights = sources.map(({ units }, index) => (known ? (dry[index] ?? 0) : units));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return new Map(sources.map(({ batchId }, index) => [batchId, (weights[index] ?? 0) / whole]));
}

/**
 * What later lives gave that is owed to one first batch, lives of lives included. A life that gathered several
 * batches gives each its part by the dry mass moved (by units where a dry mass is not known). Ten bags of 600 g dry
 * and ten of 400 g in one bed that gave 2 kg: 1.2 kg and 0.8 kg.
 */
export function laterYield(firstId: string, lives: readonly LaterLife[]): LaterYield {
  const byId = new Map(lives.map((life) => [life.batchId, life]));
  const owed = (batchId: string, seen: readonly string[]): number => {
    if (batchId === firstId) return 1;
    const life = byId.get(batchId);
    if (life === undefined || seen.includes(batchId)) return 0;
    return [...shares(life.sources)].reduce(
      (sum, [source, part]) => sum + part * owed(source, [...seen, batchId]),
      0,
    );
  };
  const parts = lives.map((life) => ({ life, part: owed(life.batchId, []) }));
  return {
    grams: Math.round(parts.reduce((sum, { life, part }) => sum + part * life.freshGrams, 0)),
    shared: parts.some(({ part }) => part > 0 && part < 1),
    anyOpen: parts.some(({ life, part }) => part > 0 && life.open),
  };
}
