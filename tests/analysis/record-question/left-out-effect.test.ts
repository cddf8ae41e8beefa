import { describe, expect, it } from 'vitest';
import { judgeBatches } from '@/lib/analysis/comparison/judged-batch';
import { leftOutEffect } from '@/lib/analysis/record-question/left-out-effect';
import { batchOf } from './facts';

const today = new Map([['site', '2026-06-01']]);
const bounds = (...batches: Parameters<typeof batchOf>[0][]) =>
  leftOutEffect('bag', judgeBatches(batches.map(batchOf), today));

describe('what missing looks do to the contamination rate', () => {
  const looked = { unitCount: 20, contaminatedByWindowEnd: 2, lastInspectedOn: '2026-03-01' };
  const unseen = { unitCount: 20, lastInspectedOn: null };

  it('puts the rate between nobody else and everybody else of the unseen', () => {
    const { rate, due, uninspected, uninspectedUnits, uninspectedPercent } = bounds(looked, unseen);
    expect({ due, uninspected, uninspectedUnits }).toEqual({ due: 2, uninspected: 1, uninspectedUnits: 20 });
    expect(uninspectedPercent).toBe(50);
    expect(rate).toEqual({ counted: 10, low: 5, high: 55 });
  });

  it('keeps what was found early, and units lost otherwise, out of what could still be', () => {
    const early = { ...unseen, contaminatedByWindowEnd: 4, contaminatedAtAnyTime: 4, lostClean: 6 };
    expect(bounds(looked, early).rate).toEqual({ counted: 10, low: 15, high: 40 });
  });

  it('leaves no room when every batch was looked at', () => {
    expect(bounds(looked).rate).toEqual({ counted: 10, low: 10, high: 10 });
  });

  it('does not count a batch whose window is open, nor one that was voided, nor another container', () => {
    const open = { ...unseen, contaminationAssessedOn: '2026-09-01' };
    const { due, uninspected } = bounds(
      looked,
      open,
      { ...unseen, voided: true },
      { ...unseen, containerKind: 'bed' },
    );
    expect({ due, uninspected }).toEqual({ due: 1, uninspected: 0 });
  });

  it('has no rate where nothing was counted', () => {
    expect(bounds(unseen).rate).toBeNull();
  });

  it('counts batches that have reached their yield day and cannot be divided', () => {
    const { yieldDue, yieldLeftOut } = bounds(
      { ...looked, weighings: 1, freshGramsByYieldDay: 900 },
      { ...looked, weighings: 1, freshGramsByYieldDay: 900, dryGrams: null },
      { ...looked, yieldAssessedOn: '2026-09-01' },
    );
    expect({ yieldDue, yieldLeftOut }).toEqual({ yieldDue: 2, yieldLeftOut: 1 });
  });
});
