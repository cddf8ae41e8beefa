import { fermentDrain } from './ferment-drain';
import { heatClock } from './heat-clock';
import { limeLift } from './lime-lift';
import { loadWaiting } from './load-waiting';
import type { RunDue, RunFacts } from './run-facts';

/** What there is to do with a treatment run now: its clock while it runs, its load until it is spawned. */
export function dueOfRun(run: RunFacts): RunDue | null {
  if (run.endedAt !== null) return loadWaiting(run);
  switch (run.window?.kind) {
    case 'heat':
      return heatClock(run, run.window);
    case 'lime':
      return limeLift(run, run.window);
    case 'ferment':
      return fermentDrain(run, run.window);
    case undefined:
      return null;
  }
}
