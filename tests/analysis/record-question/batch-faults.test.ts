import { describe, expect, it } from 'vitest';
import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import { judgeBatches } from '@/lib/analysis/comparison/judged-batch';
import { type BatchNotes, batchFaults } from '@/lib/analysis/record-question/batch-faults';
import { batchOf } from './facts';

const complete: BatchNotes = { code: 'ASH-1', isOyster: true, spawnKnown: true, quietFrom: null };

function faultsOf(facts: Partial<BatchFacts>, notes: Partial<BatchNotes> = {}, today = '2026-06-01') {
  const [judged] = judgeBatches([batchOf(facts)], new Map([['site', today]]));
  if (judged === undefined) throw new Error('the batch is judged');
  return batchFaults(judged, { ...complete, ...notes }).map(({ kind, on }) => `${kind} ${on}`);
}

describe('what is missing of a batch', () => {
  it('is nothing when everything was written down', () => {
    expect(faultsOf({})).toEqual([]);
  });

  it('is the look at the window’s end, from that day on and not before', () => {
    expect(faultsOf({ lastInspectedOn: '2026-02-20' })).toEqual(['not-inspected 2026-02-22']);
    expect(faultsOf({ lastInspectedOn: '2026-02-20' }, {}, '2026-02-21')).toEqual([]);
  });

  it('is the window, the dry mass, the run or the spawn lot', () => {
    expect(faultsOf({ contaminationAssessedOn: null })).toEqual(['no-window 2026-02-01']);
    expect(faultsOf({ dryGrams: null })).toEqual(['no-dry-mass 2026-02-01']);
    expect(faultsOf({ dryAssumed: true })).toEqual(['assumed-moisture 2026-02-01']);
    expect(faultsOf({ runMissing: true })).toEqual(['run-missing 2026-02-01']);
    expect(faultsOf({}, { spawnKnown: false })).toEqual(['no-spawn-lot 2026-02-01']);
  });

  it('asks of a bed its area, of a log and a second life no dry mass', () => {
    const bed = { containerKind: 'bed', dryGrams: null, weighings: 1 } as const;
    expect(faultsOf(bed)).toEqual(['no-area 2026-02-01']);
    expect(faultsOf({ containerKind: 'log', dryGrams: null })).toEqual([]);
    expect(faultsOf({ secondLife: true, dryGrams: null }, { spawnKnown: false })).toEqual([]);
  });

  it('is what was picked, said or not', () => {
    const nothing = { weighings: 0, freshGramsByYieldDay: 0 };
    expect(faultsOf(nothing)).toEqual(['harvest-unknown 2026-05-01']);
    const closed = { ...nothing, closedOn: '2026-04-20', noHarvest: 'not_weighed' } as const;
    expect(faultsOf(closed)).toEqual(['not-weighed 2026-04-20']);
    expect(faultsOf({ ...closed, noHarvest: 'none_picked' })).toEqual([]);
  });

  it('tells an open batch that went quiet', () => {
    expect(faultsOf({}, { quietFrom: '2026-05-20' })).toEqual(['quiet 2026-05-20']);
  });

  it('is nothing of a batch that was voided', () => {
    expect(faultsOf({ voided: true, dryGrams: null, lastInspectedOn: null })).toEqual([]);
  });
});

describe('what is hard to believe of a batch', () => {
  it('is a yield beyond every published one, or hardly any without a loss', () => {
    expect(faultsOf({ freshGramsByYieldDay: 30_000 })).toEqual(['yield-high 2026-05-01']);
    const little = { freshGramsByYieldDay: 200, closedOn: '2026-05-10' };
    expect(faultsOf(little)).toEqual(['yield-low 2026-05-10']);
    expect(faultsOf({ ...little, contaminatedAtAnyTime: 15 })).toEqual([]);
    expect(faultsOf(little, { isOyster: false })).toEqual([]);
  });
});
