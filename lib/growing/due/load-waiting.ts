import { addMinutes, minutesBetween } from '../treatment-reading';
import type { RunDue, RunFacts } from './run-facts';

/** Treated material that has waited longer than this is not spawned any more. Common practice: within days. */
const longestWaitMinutes = 14 * 1440;
/** A load out of the heat is taken to be still warm for this long while nobody has read it. Common practice. */
const coolingMinutes = 720;

/**
 * A load that is out and that no batch was filled from: it cools, then waits for spawn. After two weeks nothing is said.
 * Where the method heats, spawn goes in at or below the window's limit.
 */
export function loadWaiting(run: RunFacts): RunDue | null {
  const { endedAt, now, spawned, window, readings } = run;
  if (endedAt === null || spawned) return null;
  const out = minutesBetween(endedAt, now);
  if (out < 0 || out > longestWaitMinutes) return null;
  if (window?.kind !== 'heat')
    return {
      kind: 'load-waiting',
      urgency: 'today',
      at: endedAt,
      outAt: endedAt,
      celsius: null,
      limitCelsius: null,
    };
  const limitCelsius = window.spawnAtOrBelowCelsius;
  const read = readings.filter(({ at, celsius }) => celsius !== null && at > endedAt).at(-1)?.celsius ?? null;
  const celsius = read ?? run.loadCelsiusAtSpawning;
  const warm = celsius === null ? out < coolingMinutes : celsius > limitCelsius;
  return warm
    ? {
        kind: 'load-cooling',
        urgency: 'now',
        celsius,
        limitCelsius,
        outAt: endedAt,
        at: addMinutes(endedAt, coolingMinutes),
      }
    : { kind: 'load-waiting', urgency: 'today', at: endedAt, outAt: endedAt, celsius, limitCelsius };
}
