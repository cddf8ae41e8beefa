import type { BatchFacts } from '@/lib/growing/due/batch-facts';

/** Oyster bags of 2026-04-01, nothing written since, nothing of the site's own known. */
export function aBatch(changes: Partial<BatchFacts> = {}): BatchFacts {
  const inoculatedOn = changes.inoculatedOn ?? '2026-04-01';
  return {
    today: '2026-04-08',
    container: 'bag',
    inoculatedOn,
    secondLife: false,
    liveUnits: 20,
    judgedOn: '2026-04-29',
    inspectedOn: null,
    colonisedOn: null,
    pinsOn: null,
    pickedOn: null,
    enteredOn: inoculatedOn,
    expected: {
      firstLook: 10,
      colonised: { from: 12, to: 25 },
      pins: { from: 16, to: 32 },
      firstHarvest: { from: 21, to: 40 },
      betweenFlushes: { from: 7, to: 14 },
    },
    own: { colonised: null, firstHarvest: null },
    ...changes,
  };
}

/** Shiitake logs of 2025-04-01: months to the first fruit, no interval between flushes. */
export function someLogs(changes: Partial<BatchFacts> = {}): BatchFacts {
  return aBatch({
    container: 'log',
    inoculatedOn: '2025-04-01',
    enteredOn: '2025-04-01',
    judgedOn: '2026-04-01',
    expected: {
      firstLook: null,
      colonised: { from: 180, to: 365 },
      pins: null,
      firstHarvest: { from: 180, to: 540 },
      betweenFlushes: null,
    },
    ...changes,
  });
}
