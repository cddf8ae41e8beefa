import type { CoursePiece } from './temperature-course';

/** The longest stay of a load in its window. Minutes inside are counted, dips and time above are not. */
export type HeatHold = {
  readonly insideMinutes: number;
  readonly aboveMinutes: number;
  readonly fromMinute: number | null;
  readonly toMinute: number | null;
};

const nothing: HeatHold = { insideMinutes: 0, aboveMinutes: 0, fromMinute: null, toMinute: null };

/**
 * The longest hold in a run: stretches inside the window joined over falls below it of at most
 * `allowedDipMinutes`. Time above the window joins too but is counted apart. With `onlySure`, stretches between
 * readings too far apart break the hold, as if the load had been cold.
 */
export function longestHold(
  pieces: readonly CoursePiece[],
  allowedDipMinutes: number,
  onlySure: boolean,
): HeatHold {
  let best = nothing;
  let current = nothing;
  let dip = 0;
  for (const piece of pieces) {
    const minutes = piece.toMinute - piece.fromMinute;
    if (onlySure && !piece.sure) {
      current = nothing;
      dip = 0;
      continue;
    }
    if (piece.state === 'below') {
      dip += minutes;
      if (dip > allowedDipMinutes) current = nothing;
      continue;
    }
    dip = 0;
    current = {
      insideMinutes: current.insideMinutes + (piece.state === 'inside' ? minutes : 0),
      aboveMinutes: current.aboveMinutes + (piece.state === 'above' ? minutes : 0),
      fromMinute: current.fromMinute ?? piece.fromMinute,
      toMinute: piece.toMinute,
    };
    const longer = current.insideMinutes - best.insideMinutes || current.aboveMinutes - best.aboveMinutes;
    if (longer > 0) best = current;
  }
  return best;
}
