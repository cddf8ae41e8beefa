import type { RunJudgement } from './judge-run';
import type { TreatmentWindow } from './treatment-window';

/**
 * Where a run stands to its window. `well`: a quarter or more beyond the least time; `just`: the least time and less than a
 * quarter more; `outside`: too short, never reached, pH too low or too hot; `long`: longer than asked; `unknown`: the readings
 * do not tell. The quarter is our choice.
 */
export const runStandings = ['well', 'just', 'outside', 'long', 'unknown'] as const;
export type RunStanding = (typeof runStandings)[number];

export type WindowMargin = {
  readonly standing: RunStanding;
  /** Time held over the least time, 1 being just enough; null where the readings do not tell. */
  readonly heldShare: number | null;
};

const wellBeyond = 1.25;
const unknown: WindowMargin = { standing: 'unknown', heldShare: null };
const minutesPerDay = 1440;

/** How far inside or outside its window an ended run lies; undefined while it runs and where there is no window. */
export function windowMargin(
  judgement: RunJudgement,
  window: TreatmentWindow | null,
): WindowMargin | undefined {
  if (judgement.kind === 'none' || window === null) return undefined;
  const { check } = judgement;
  if (check.kind === 'cannot-compute') return unknown;
  const { verdict } = check.value;
  if (verdict === 'running') return undefined;
  const heldShare = heldMinutes(judgement) / leastMinutes(window);
  if (!Number.isFinite(heldShare)) return unknown;
  if (verdict === 'too_long') return { standing: 'long', heldShare };
  if (verdict !== 'as_planned') return { standing: 'outside', heldShare };
  return { standing: heldShare >= wellBeyond ? 'well' : 'just', heldShare };
}

function heldMinutes(judgement: Exclude<RunJudgement, { kind: 'none' }>): number {
  switch (judgement.kind) {
    case 'heat':
      return judgement.check.kind === 'value' ? judgement.check.value.minutesInWindow : Number.NaN;
    case 'lime': {
      if (judgement.check.kind !== 'value') return Number.NaN;
      const { minutesAtPh, minutesSubmerged } = judgement.check.value;
      return minutesAtPh ?? minutesSubmerged;
    }
    case 'ferment':
      return judgement.check.kind === 'value' ? judgement.check.value.days * minutesPerDay : Number.NaN;
  }
}

/** The least time in the window, minutes. */
export function leastMinutes(window: TreatmentWindow): number {
  return window.kind === 'ferment' ? window.minDays * minutesPerDay : window.minMinutes;
}
