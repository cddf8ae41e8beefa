import { describe, expect, it } from 'vitest';
import { wetBasisPercent } from '@/lib/growing/moisture-basis';
import {
  spawnDryToWet,
  spawnNeeded,
  spawnPercentOfDry,
  spawnPercentOfWet,
  spawnWetToDry,
} from '@/lib/growing/spawn-rate';
import { expectReason, given } from './expect-value';

const wet = (percent: number) => given(wetBasisPercent(percent));

describe('spawn rate', () => {
  it.each([
    ['ARGAW23', 60, 1000, 6.0],
    ['ADJAPONG15', 50, 1000, 5.0],
    ['Adv Agric 2019, 6853627, substrate', 200, 5000, 4.0],
    ['Adv Agric 2019, 6853627, with gypsum', 200, 6000, 3.33],
  ])('%s: %d g per %d g is %d %%', (_source, spawn, substrate, expected) => {
    expect(given(spawnPercentOfWet(spawn, substrate))).toBeCloseTo(expected, 2);
  });

  it('differs by the dry matter fraction between the bases', () => {
    const ofWet = given(spawnPercentOfWet(5, 100));
    expect(spawnWetToDry(ofWet, wet(70))).toBeCloseTo(16.67, 2);
    expect(spawnDryToWet(given(spawnPercentOfDry(10, 100)), wet(75))).toBeCloseTo(2.5, 10);
    expect(spawnDryToWet(spawnWetToDry(ofWet, wet(70)), wet(70))).toBeCloseTo(5, 10);
  });

  it('works out the spawn for 20 bags of 2.5 kg at 4 % and what the lot lacks', () => {
    expect(given(spawnNeeded(20, 2500, 4))).toEqual({ spawnGrams: 2000, shortfallGrams: null });
    expect(given(spawnNeeded(20, 2500, 4, 1500)).shortfallGrams).toBe(500);
    expect(given(spawnNeeded(20, 2500, 4, 2500)).shortfallGrams).toBe(0);
  });

  it('says what is missing', () => {
    expectReason(spawnPercentOfWet(null, 1000), 'spawn-missing');
    expectReason(spawnPercentOfWet(50, 0), 'substrate-missing');
    expectReason(spawnPercentOfDry(50, null), 'substrate-missing');
    expectReason(spawnNeeded(-1, 2500, 4), 'out-of-range');
  });
});
