import type { FigureMark, LeftOutReason, ShownFigure } from '../shown-figure';
import { type LaterLife, laterYield } from './later-lives';

export type FirstLife = {
  readonly id: string;
  readonly code: string;
  readonly isBed: boolean;
  readonly units: number;
  readonly dryGrams: number | null;
  readonly dryAssumed: boolean;
  readonly open: boolean;
  readonly freshGrams: number;
};

/** A later life as read; `freshGrams` is null at a site that the reader may not see. */
export type ReadLife = Omit<LaterLife, 'freshGrams'> & { readonly freshGrams: number | null };

/** First life, later lives and both together, in fresh grams; null where a part is not the reader's to see. */
export type LivesTogether = {
  readonly id: string;
  readonly code: string;
  readonly firstGrams: number;
  readonly laterGrams: number | null;
  readonly togetherGrams: number | null;
  /** Fresh mass of all lives over the dry mass of the first, percent. Never the first life's biological efficiency. */
  readonly perDryGramOfFirst: ShownFigure;
};

/**
 * Puts the lives of one batch side by side. The first life's own figures do not change by it: what is divided by its
 * dry mass here has a name of its own and is never called biological efficiency.
 */
export function livesTogether(first: FirstLife, lives: readonly ReadLife[], asOf: string): LivesTogether {
  const seen = lives.flatMap((life): LaterLife[] =>
    life.freshGrams === null ? [] : [{ ...life, freshGrams: life.freshGrams }],
  );
  const allSeen = seen.length === lives.length;
  const later = laterYield(first.id, seen);
  const together = first.freshGrams + later.grams;
  const marks: FigureMark[] = [];
  if (later.shared) marks.push('shared-among-sources');
  if (first.open || later.anyOpen) marks.push('still-open');
  if (first.dryAssumed) marks.push('assumed-moisture');
  const about = {
    unit: 'percent',
    n: { batches: 1 + lives.length, units: first.units, runs: 0, sites: 0 },
    method: { code: 'sum', source: '', clusteredBy: 'nothing' },
    marks,
    leftOut: [],
    asOf,
    rowsQuery: '',
  } as const;
  const leftOut = (reason: LeftOutReason): ShownFigure => ({
    ...about,
    kind: 'cannot',
    reason: 'all-left-out',
    leftOut: [{ reason, batches: 1, units: first.units }],
  });
  const figure = (): ShownFigure => {
    if (!allSeen) return { ...about, kind: 'cannot', reason: 'other-site-unseen' };
    if (first.isBed) return { ...about, kind: 'cannot', reason: 'beds-have-no-be' };
    if (first.dryGrams === null || first.dryGrams <= 0) return leftOut('no-dry-mass');
    return {
      ...about,
      kind: 'figure',
      value: (100 * together) / first.dryGrams,
      interval: { kind: 'none', reason: 'complete-count' },
      parts: { numerator: together, denominator: first.dryGrams, unit: 'grams' },
    };
  };
  return {
    id: first.id,
    code: first.code,
    firstGrams: first.freshGrams,
    laterGrams: allSeen ? later.grams : null,
    togetherGrams: allSeen ? together : null,
    perDryGramOfFirst: figure(),
  };
}
