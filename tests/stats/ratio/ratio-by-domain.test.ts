import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDomainRatios } from '@/lib/stats/ratio/compare-domain-ratios';
import { type RatiosByDomain, ratioByDomain } from '@/lib/stats/ratio/ratio-by-domain';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { batchRows, columns, inKilograms, rearranged } from './batch-rows';

const paired = {
  numerator: [600, 900, 500, 800, 700, 1000, 400, 720],
  denominator: [1000, 1000, 1000, 1000, 1000, 1000, 1000, 1000],
  cluster: ['a', 'a', 'b', 'b', 'c', 'c', 'd', 'd'],
  domain: ['lime', 'steam', 'lime', 'steam', 'lime', 'steam', 'lime', 'steam'],
  level: 0.95,
};

function ratiosOf(rows: Parameters<typeof ratioByDomain>[0]): RatiosByDomain {
  const answer = ratioByDomain(rows);
  if (answer.kind !== 'estimate') throw new Error(`no ratios: ${answer.explanation}`);
  return answer;
}

describe('ratioByDomain', () => {
  it('is the ratio of sums when there is one domain', () => {
    fc.assert(
      fc.property(batchRows, (rows) => {
        const all = columns(rows.map((row) => ({ ...row, method: 'steam' })));
        const [one, other] = [ratioByDomain(all), ratioOfSums(all)];
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(one.domains[0]?.estimate).toBeCloseTo(other.estimate, 12);
        expect(one.domains[0]?.standardError).toBeCloseTo(Number(other.standardError), 10);
        expect(one.df).toBe(other.degreesOfFreedom);
      }),
    );
  });

  it('does not depend on the order of rows, on their being split, on names, or on the unit of weight', () => {
    fc.assert(
      fc.property(batchRows, (rows) => {
        const [one, other] = [
          ratioByDomain(columns(rows)),
          ratioByDomain(columns(inKilograms(rearranged(rows)))),
        ];
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.domains.map(({ domain }) => domain)).toEqual(one.domains.map(({ domain }) => domain));
        one.domains.forEach((domain, index) => {
          expect(other.domains[index]?.estimate).toBeCloseTo(domain.estimate, 10);
          expect(other.domains[index]?.standardError).toBeCloseTo(domain.standardError, 9);
        });
      }),
    );
  });

  it('lists the domains without any denominator as left out', () => {
    const answer = ratiosOf({
      numerator: [4, 3, 0],
      denominator: [6, 5, 0],
      cluster: ['a', 'b', 'b'],
      domain: ['lime', 'lime', 'steam'],
      level: 0.95,
    });
    expect(answer.domains.map(({ domain }) => domain)).toEqual(['lime']);
    expect(answer.domainsLeftOut).toEqual(['steam']);
  });

  it('answers one cluster, no rows and no denominator by their reason, and names a short list', () => {
    const one = { ...paired, cluster: paired.cluster.map(() => 'a') };
    expect(ratioByDomain(one)).toMatchObject({ reason: 'too-few-clusters' });
    const none = { numerator: [], denominator: [], cluster: [], domain: [], level: 0.95 };
    expect(ratioByDomain(none)).toMatchObject({ reason: 'no-data' });
    const empty = { ...paired, denominator: paired.denominator.map(() => 0) };
    expect(ratioByDomain(empty)).toMatchObject({ reason: 'zero-denominator' });
    expect(() => ratioByDomain({ ...paired, domain: ['lime'] })).toThrow(/^domain/);
    expect(() => ratioByDomain({ ...paired, level: 2 })).toThrow(/^level/);
  });
});

describe('compareDomainRatios', () => {
  it('is sharper where every site has tried both methods than where sites differ in method', () => {
    const apart = { ...paired, cluster: paired.cluster.map((site, row) => `${site}${row % 2}`) };
    const both = compareDomainRatios(ratiosOf(paired), 'steam', 'lime');
    const separate = compareDomainRatios(ratiosOf(apart), 'steam', 'lime');
    expect(both.estimate).toBeCloseTo(separate.estimate, 12);
    expect(both.standardError).toBeLessThan(separate.standardError / 2);
    expect(Number(both.pValue)).toBeLessThan(Number(separate.pValue));
  });

  it('turns over when the two change places', () => {
    const ratios = ratiosOf(paired);
    const [one, other] = [
      compareDomainRatios(ratios, 'steam', 'lime'),
      compareDomainRatios(ratios, 'lime', 'steam'),
    ];
    expect(other.estimate).toBeCloseTo(-one.estimate, 12);
    expect(other.interval.low).toBeCloseTo(-one.interval.high, 12);
    expect(other.pValue).toBe(one.pValue);
    expect(Number(other.ratioOfRatios) * Number(one.ratioOfRatios)).toBeCloseTo(1, 12);
  });

  it('has no ratio of ratios where one method gave nothing, and no test where neither varies', () => {
    const nothing = { ...paired, numerator: paired.numerator.map((fresh, row) => (row % 2 ? fresh : 0)) };
    const answer = compareDomainRatios(ratiosOf(nothing), 'steam', 'lime');
    expect(answer.ratioOfRatios).toMatchObject({ reason: 'zero-denominator' });
    expect(answer.standardErrorOfLog).toMatchObject({ reason: 'zero-denominator' });
    const still = { ...paired, numerator: paired.numerator.map((_, row) => (row % 2 ? 900 : 600)) };
    expect(compareDomainRatios(ratiosOf(still), 'steam', 'lime').pValue).toMatchObject({
      reason: 'no-variation',
    });
  });

  it('names a domain that has no ratio', () => {
    expect(() => compareDomainRatios(ratiosOf(paired), 'steam', 'ash')).toThrow(/^second.*ash/);
  });
});
