import { type FaultKind, isImplausible, type RecordFault } from '../record-question/record-fault';
import type { Signal } from './signal';

/** What can still be put right if somebody is told in time; the rest is on the page of all records. */
const pressing: ReadonlySet<FaultKind> = new Set(['not-inspected', 'quiet', 'run-no-end', 'no-window']);

/** One line a site with records that went missing, or that are hard to believe, since the day given. */
export function recordSignals(faults: readonly RecordFault[], since: string): Signal[] {
  const bySite = new Map<string, RecordFault[]>();
  for (const fault of faults) {
    if (fault.on < since || !(pressing.has(fault.kind) || isImplausible(fault.kind))) continue;
    bySite.set(fault.siteId, [...(bySite.get(fault.siteId) ?? []), fault]);
  }
  return [...bySite].map(([siteId, own]): Signal => {
    const oldestFirst = own.toSorted((a, b) => a.on.localeCompare(b.on) || a.code.localeCompare(b.code));
    const latest = oldestFirst.at(-1)?.on ?? since;
    const implausible = own.filter(({ kind }) => isImplausible(kind)).length;
    return {
      kind: 'records',
      // A further one begins a new line, which an answer to this one does not fold away.
      key: `records:${siteId}:${latest}`,
      since: latest,
      ...{ siteId, implausible, missing: own.length - implausible },
      oldest: oldestFirst[0]?.on ?? since,
      codes: [...new Set(oldestFirst.map(({ code }) => code))],
    };
  });
}
