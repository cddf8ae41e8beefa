import { describe, expect, it } from 'vitest';
import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import { compare } from '@/lib/analysis/comparison/compare';
import { bags, judgedOn, oysterBags } from '../bags-of';

const asOf = '2026-12-31T12:00:00.000Z';
const rowOf = (facts: readonly BatchFacts[], filter = oysterBags) =>
  compare(judgedOn(facts), filter, asOf).total;
/** Three sites, so that the total over sites has an interval. */
const threeSites = (facts: readonly Partial<BatchFacts>[]) =>
  facts.map((one, index) => bags({ id: `batch-${index}`, siteId: `site ${index % 3}`, ...one }));
const shownValue = (figure: ReturnType<typeof rowOf>['yield']) => {
  if (figure.kind !== 'figure') throw new Error(figure.kind);
  return figure.value;
};

describe('pooled biological efficiency', () => {
  // 444 g of 500 g and 166 g of 1000 g: Nasir et al. and Argaw et al. 2023; their pool is worked out by hand.
  it('divides sums: 444/500 and 166/1000 pool to 40.67 and not to the mean of 88.8 and 16.6', () => {
    const facts = threeSites([
      { dryGrams: 500, freshGramsByYieldDay: 444 },
      { dryGrams: 1000, freshGramsByYieldDay: 166 },
    ]);
    const figure = rowOf(facts).yield;
    expect(figure).toMatchObject({
      kind: 'counts',
      reason: 'too-few-sites',
      parts: { numerator: 610, denominator: 1500 },
    });
    const third = bags({ id: 'c', siteId: 'site 2', dryGrams: 1500, freshGramsByYieldDay: 610 });
    expect(shownValue(rowOf([...facts, third]).yield)).toBeCloseTo(40.67, 2);
  });

  it('takes a total loss as nothing over its dry mass, and leaves it out of "of batches that cropped"', () => {
    const facts = threeSites([
      { freshGramsByYieldDay: 6_000 },
      { freshGramsByYieldDay: 6_000 },
      { freshGramsByYieldDay: 6_000 },
      { freshGramsByYieldDay: 0, weighings: 0, contaminatedAtAnyTime: 20 },
    ]);
    const row = rowOf(facts);
    expect(shownValue(row.yield)).toBeCloseTo(45, 10);
    expect(shownValue(row.yieldOfCropped)).toBeCloseTo(60, 10);
    expect(row.yieldOfCropped.leftOut).toEqual([{ reason: 'did-not-crop', batches: 1, units: 20 }]);
  });

  it('names what was not weighed and does not take it for nothing', () => {
    const facts = threeSites([
      {},
      {},
      {},
      { freshGramsByYieldDay: 0, weighings: 0, noHarvest: 'not_weighed' },
      { dryGrams: null },
    ]);
    const { yield: figure } = rowOf(facts);
    expect(shownValue(figure)).toBeCloseTo(60, 10);
    expect(figure.leftOut).toEqual([
      { reason: 'no-dry-mass', batches: 1, units: 20 },
      { reason: 'not-weighed', batches: 1, units: 20 },
    ]);
  });

  it('shows what was weighed after the yield day apart', () => {
    const row = rowOf(threeSites([{ freshGramsLater: 700 }, {}, { freshGramsLater: 300 }]));
    expect(row.laterGrams).toBe(1000);
    expect(shownValue(row.yield)).toBeCloseTo(60, 10);
  });

  it('says when trimmed and untrimmed weights stand together', () => {
    const marksOf = (facts: readonly Partial<BatchFacts>[]) => rowOf(threeSites(facts)).yield.marks;
    const trimmed = { anyTrimmed: true, anyAsPicked: false };
    expect(marksOf([{}, {}, {}])).toContain('as-picked');
    expect(marksOf([trimmed, trimmed, trimmed])).toContain('trimmed');
    expect(marksOf([trimmed, {}, {}])).toContain('mixed-trim');
    expect(marksOf([{ ...trimmed, anyAsPicked: true }])).toContain('mixed-trim');
  });

  it('marks figures that rest on an assumed moisture or on few batches', () => {
    const many = Array.from({ length: 10 }, () => ({}));
    expect(rowOf(threeSites(many)).yield.marks).toEqual(['as-picked']);
    expect(rowOf(threeSites([...many, { dryAssumed: true }])).yield.marks).toContain('assumed-moisture');
    expect(rowOf(threeSites([{}, {}, {}])).yield.marks).toContain('few-batches');
  });

  it('gives logs in grams per log and year', () => {
    const logs = {
      containerKind: 'log',
      unitCount: 10,
      inoculatedOn: '2024-12-31',
      freshGramsByYieldDay: 7_300,
    } as const;
    const { yield: figure } = rowOf(threeSites([logs, logs, logs]), { ...oysterBags, container: 'log' });
    expect(figure.unit).toBe('grams-per-log-year');
    expect(shownValue(figure)).toBeCloseTo((7_300 / 10 / 730) * 365.2425, 6);
  });

  it('gives logs their biological efficiency only over the whole life of those that are closed', () => {
    const logs = {
      containerKind: 'log',
      unitCount: 10,
      inoculatedOn: '2024-12-31',
      dryGrams: 40_000,
    } as const;
    const finished = { ...logs, closedOn: '2026-06-30', freshGramsByYieldDay: 3_000, freshGramsLater: 1_000 };
    const facts = threeSites([finished, finished, finished, { ...logs, freshGramsByYieldDay: 9_000 }]);
    const row = rowOf(facts, { ...oysterBags, container: 'log' });
    expect(row.logLifeBe).toMatchObject({
      unit: 'percent',
      value: 10,
      parts: { numerator: 12_000, denominator: 120_000, unit: 'grams' },
      leftOut: [{ reason: 'log-not-finished', batches: 1 }],
    });
    expect(rowOf(threeSites([{}])).logLifeBe).toBeUndefined();
  });

  it('never shows a lower limit below nothing', () => {
    const facts = threeSites([
      { freshGramsByYieldDay: 9_000 },
      { freshGramsByYieldDay: 100 },
      { freshGramsByYieldDay: 50 },
    ]);
    const figure = rowOf(facts).yield;
    if (figure.kind !== 'figure' || figure.interval.kind !== 'interval') throw new Error('no interval');
    expect(figure.interval.low).toBe(0);
  });
});
