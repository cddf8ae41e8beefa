import { describe, expect, it } from 'vitest';
import { compare } from '@/lib/analysis/comparison/compare';
import { together } from '@/lib/analysis/comparison/comparison-filter.input';
import { bags, contaminatedBags, hotWater, judgedOn, lime, millLane, oysterBags, quarry } from '../bags-of';

const asOf = '2026-12-31T12:00:00.000Z';
const total = (facts: Parameters<typeof judgedOn>[0], filter = oysterBags) =>
  compare(judgedOn(facts), filter, asOf).cells[0];

describe('contamination of a method at a site', () => {
  it('pools units, not rates: 2 of 20, 5 of 10 and 0 of 30 are 7 of 60', () => {
    const facts = [
      bags({ id: 'a', contaminatedByWindowEnd: 2, contaminatedAtAnyTime: 2 }),
      bags({ id: 'b', contaminatedByWindowEnd: 5, contaminatedAtAnyTime: 5, unitCount: 10 }),
      bags({ id: 'c', unitCount: 30 }),
    ];
    const figure = total(facts)?.contamination;
    expect(figure).toMatchObject({ kind: 'figure', parts: { numerator: 7, denominator: 60 } });
    expect(figure?.kind === 'figure' ? figure.value : 0).toBeCloseTo(11.6667, 3);
  });

  it('shows counts where fewer than three runs carry it, however many batches there are', () => {
    const facts = contaminatedBags([1, 2, 3, 4], { runIds: ['bath'] });
    const more = contaminatedBags([0], { id: 'last', runIds: ['soak'] });
    const figure = total([...facts, ...more])?.contamination;
    expect(figure).toMatchObject({
      kind: 'counts',
      reason: 'too-few-runs',
      parts: { numerator: 10, denominator: 100 },
      n: { batches: 5, units: 100, runs: 2, sites: 1 },
    });
  });

  it('gives an interval from the third run on, holding the estimate', () => {
    const facts = ['bath', 'soak', 'steam'].flatMap((run, index) =>
      contaminatedBags([index, index + 1], { runIds: [run] }).map((one) => ({
        ...one,
        id: `${run} ${one.id}`,
      })),
    );
    const figure = total(facts)?.contamination;
    if (figure?.kind !== 'figure' || figure.interval.kind !== 'interval') throw new Error('no interval');
    expect(figure.value).toBeCloseTo(7.5, 10);
    expect(figure.interval.low).toBeLessThan(7.5);
    expect(figure.interval.high).toBeGreaterThan(7.5);
  });

  it('is wider when bags that fail together share a run than when each batch stands alone', () => {
    const apart = contaminatedBags([10, 10, 10, 0, 0, 0, 0, 0, 0]);
    const shared = apart.map((one, index) => ({ ...one, runIds: [`run ${Math.floor(index / 3)}`] }));
    const widthOf = (facts: typeof apart) => {
      const figure = total(facts)?.contamination;
      if (figure?.kind !== 'figure' || figure.interval.kind !== 'interval') throw new Error('no interval');
      return figure.interval.high - figure.interval.low;
    };
    expect(widthOf(shared)).toBeGreaterThan(widthOf(apart) + 1);
  });

  it('counts batches not inspected beside the rate and never as 0 of n', () => {
    const facts = [...contaminatedBags([1, 2, 3]), bags({ id: 'unseen', lastInspectedOn: null })];
    expect(total(facts)?.contamination).toMatchObject({
      parts: { numerator: 6, denominator: 60 },
      leftOut: [{ reason: 'not-inspected', batches: 1, units: 20 }],
    });
  });

  it('keeps what was found while cropping in a column of its own', () => {
    const facts = contaminatedBags([1, 2, 3]).map((one) => ({
      ...one,
      contaminatedAtAnyTime: one.contaminatedByWindowEnd + 2,
    }));
    const row = total(facts);
    expect(row?.contamination).toMatchObject({ parts: { numerator: 6 } });
    expect(row?.contaminationAtAnyTime).toMatchObject({ parts: { numerator: 12 } });
  });

  it('shows units lost otherwise apart and keeps them among the inoculated', () => {
    const row = total(contaminatedBags([1, 2, 3], { lostClean: 4 }));
    expect(row?.lostOtherUnits).toBe(12);
    expect(row?.contamination).toMatchObject({ parts: { numerator: 6, denominator: 60 } });
  });

  it('counts failed beds and rates them never', () => {
    const beds = contaminatedBags([1, 0, 0, 1], { containerKind: 'bed', unitCount: 1, bedAreaCm2: 20_000 });
    const row = total(beds, { ...oysterBags, container: 'bed' });
    expect(row?.contamination).toMatchObject({
      kind: 'counts',
      reason: 'beds-are-counted',
      parts: { numerator: 2, denominator: 4 },
    });
    expect(row?.yield).toMatchObject({ kind: 'figure', unit: 'kilograms-per-square-metre', value: 3 });
  });

  it('cannot say anything where every batch had to be left out, and says what they were', () => {
    expect(total([bags({ lastInspectedOn: null })])?.contamination).toMatchObject({
      kind: 'cannot',
      reason: 'all-left-out',
      leftOut: [{ reason: 'not-inspected', batches: 1, units: 20 }],
    });
  });
});

describe('totals', () => {
  const both = [
    ...contaminatedBags([1, 2, 3]),
    ...contaminatedBags([4, 5, 6], { siteId: quarry, methodId: lime }).map((one) => ({
      ...one,
      id: `q ${one.id}`,
    })),
  ];

  it('clusters a site total by run and a method total by site', () => {
    const comparison = compare(judgedOn(both), oysterBags, asOf);
    expect(comparison.sites.map((row) => row.contamination.method.clusteredBy)).toEqual([
      'treatment-run',
      'treatment-run',
    ]);
    expect(comparison.sites.map((row) => row.contamination.kind)).toEqual(['figure', 'figure']);
    expect(comparison.methods.map((row) => row.contamination)).toMatchObject([
      { kind: 'counts', reason: 'too-few-sites', method: { clusteredBy: 'site' } },
      { kind: 'counts', reason: 'too-few-sites' },
    ]);
  });

  it('does not depend on the order in which batches come', () => {
    const sorted = (rows: ReturnType<typeof compare>['cells']) =>
      [...rows].sort((a, b) => `${a.method} ${a.site}`.localeCompare(`${b.method} ${b.site}`));
    const one = compare(judgedOn(both), oysterBags, asOf);
    const other = compare(judgedOn(both.toReversed()), oysterBags, asOf);
    expect(sorted(other.cells)).toEqual(sorted(one.cells));
    expect(sorted(other.sites)).toEqual(sorted(one.sites));
    expect(sorted(other.methods)).toEqual(sorted(one.methods));
    expect(other.total).toEqual(one.total);
  });

  it('gives mixed methods, second lives and unknown methods rows of their own', () => {
    const facts = [
      bags({ id: 'a' }),
      bags({ id: 'b', methodId: null, mixedMethod: true }),
      bags({ id: 'c', secondLife: true }),
      bags({ id: 'd', methodId: null }),
    ];
    const { methods } = compare(judgedOn(facts), oysterBags, asOf);
    expect(methods.map((row) => row.method).sort()).toEqual([hotWater, 'mixed', 'none', 'second-life']);
  });

  it('opens the batches behind each figure by the same address with its method and site', () => {
    const { cells } = compare(judgedOn(contaminatedBags([1])), oysterBags, asOf);
    const query = new URLSearchParams(cells[0]?.contamination.rowsQuery);
    expect(query.get('method')).toBe(hotWater);
    expect(query.get('site')).toBe(millLane);
    expect(query.get('species')).toBe('oyster');
  });

  it('says that species are together only when the reader asked for it', () => {
    const facts = contaminatedBags([1, 2, 3]);
    expect(total(facts)?.contamination.marks).not.toContain('species-pooled');
    expect(total(facts, { ...oysterBags, species: together })?.contamination.marks).toContain(
      'species-pooled',
    );
  });
});
