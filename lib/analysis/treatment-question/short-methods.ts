import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { leastMinutes } from '@/lib/growing/window-margin';
import type { JudgedRun } from './judged-run';

/** A method whose runs at one site mostly did not hold their window. */
export type ShortMethod = {
  readonly methodId: string;
  readonly window: TreatmentWindow;
  /** Runs whose readings tell, and of those the ones that did not hold. */
  readonly judged: number;
  readonly outside: number;
  /** Runs whose readings do not tell. */
  readonly unknown: number;
  /** Minutes that the latest run outside its window held it. */
  readonly heldMinutes: number;
  /** The latest run of all that can be judged held its window. */
  readonly latestHeld: boolean;
};

/** Of fewer runs nothing is said, nor where fewer than this part of them lay outside. Our choice. */
const fewestJudged = 5;
const tellingShare = 0.5;

/** The methods of which a site's own runs say that they are not held, the most such runs first. */
export function shortMethods(
  runs: readonly JudgedRun[],
  windows: ReadonlyMap<string, TreatmentWindow | null>,
): ShortMethod[] {
  const byDay = runs.toSorted((a, b) => a.startedOn.localeCompare(b.startedOn) || (a.id < b.id ? -1 : 1));
  return [...windows]
    .flatMap(([methodId, window]) => {
      const own = byDay.filter((run) => run.methodId === methodId);
      const judged = own.filter(({ standing }) => standing !== 'unknown');
      const outside = judged.filter(({ standing }) => standing === 'outside');
      const short = outside.at(-1);
      if (window === null || short === undefined) return [];
      if (judged.length < fewestJudged || outside.length < tellingShare * judged.length) return [];
      return [
        {
          methodId,
          window,
          judged: judged.length,
          outside: outside.length,
          unknown: own.length - judged.length,
          heldMinutes: (short.heldShare ?? 0) * leastMinutes(window),
          latestHeld: judged.at(-1) !== short,
        },
      ];
    })
    .sort((a, b) => b.outside - a.outside || (a.methodId < b.methodId ? -1 : 1));
}
