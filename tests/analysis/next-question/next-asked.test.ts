import { describe, expect, it } from 'vitest';
import { parseNextAsked, queryOfNext } from '@/lib/analysis/next-question/next-choice.input';

const site = '01a216ad-a844-772f-8d65-d8e014074084';
const steam = '01a216ad-a666-72f2-9efa-836e9c3967ed';
const lime = '01a216ad-a666-72f2-9efa-7bf21564dc4c';

describe('what is asked of a site', () => {
  it('comes back from its own address', () => {
    const asked = parseNextAsked({ site, season: 'winter', equipment: 'these', methods: [steam, lime] });
    expect(asked).toMatchObject({ site, season: 'winter', methods: [lime, steam].sort() });
    const again = new URLSearchParams(queryOfNext(asked));
    expect(parseNextAsked({ ...Object.fromEntries(again), methods: again.getAll('methods') })).toEqual(asked);
  });

  it('tells no method from methods that nobody asked about', () => {
    expect(parseNextAsked({ equipment: 'these' }).methods).toEqual([]);
    expect(parseNextAsked({ methods: [steam] }).methods).toBeUndefined();
    expect(parseNextAsked({}).methods).toBeUndefined();
  });

  it('leaves out what cannot be read, and what the form leaves empty', () => {
    expect(
      parseNextAsked({
        site: 'x',
        species: '',
        season: 'monsoon',
        container: 'jar',
        equipment: 'these',
        methods: 'y',
      }),
    ).toEqual({
      site: undefined,
      species: undefined,
      material: undefined,
      season: undefined,
      container: undefined,
      methods: [],
    });
  });
});
