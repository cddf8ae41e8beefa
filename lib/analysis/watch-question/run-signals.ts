import type { RunOfSite } from '../record-question/run-faults';
import type { RunVerdict, Signal } from './signal';

const outside: ReadonlySet<string> = new Set<RunVerdict>([
  'cut_short',
  'never_reached',
  'too_hot',
  'too_long',
  'ph_low',
]);
const isOutside = (verdict: string): verdict is RunVerdict => outside.has(verdict);

/** Treatment runs that ended outside the window of their method. */
export function runSignals(runs: readonly RunOfSite[]): Signal[] {
  return runs.flatMap(({ id, code, siteId, startedOn, judgement }): Signal[] => {
    if (judgement.kind === 'none' || judgement.check.kind !== 'value') return [];
    const { verdict } = judgement.check.value;
    if (!isOutside(verdict)) return [];
    return [
      { kind: 'run', key: `run:${id}:${verdict}`, since: startedOn, runId: id, ...{ code, siteId, verdict } },
    ];
  });
}
