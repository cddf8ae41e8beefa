import { describe, expect, it } from 'vitest';
import {
  logDryDensity,
  logDryGramsFromGreen,
  logDryGramsFromVolume,
  logGreenDensity,
} from '@/lib/growing/log-dry-mass';
import { logVolumeCubicMetres, taperedLogVolumeCubicMetres } from '@/lib/growing/log-volume';
import { findLogWood, logWoods } from '@/lib/growing/log-wood';
import { expectReason, given } from './expect-value';

const volume = given(logVolumeCubicMetres(127, 1016));
const kilograms = (code: number, part: 'wood' | 'wood_and_bark') =>
  given(logDryGramsFromVolume(code, volume, part)) / 1000;

describe('log dry mass (FIA table, Miles & Smith 2009)', () => {
  it('has the volume of a log of 12.7 cm x 101.6 cm', () => {
    expect(volume).toBeCloseTo(0.0128704, 7);
  });

  it.each([
    [802, 'white oak', 7.722],
    [833, 'northern red oak', 7.207],
    [318, 'sugar maple', 7.207],
    [611, 'sweetgum', 5.92],
    [746, 'quaking aspen', 4.505],
  ])('%d %s, wood only: %d kg', (code, _name, expected) => {
    expect(kilograms(code, 'wood')).toBeCloseTo(expected, 3);
  });

  it.each([
    [802, 'white oak', 7.651],
    [833, 'northern red oak', 7.465],
    [318, 'sugar maple', 7.173],
    [316, 'red maple', 6.419],
    [611, 'sweetgum', 5.853],
    [746, 'quaking aspen', 4.748],
    [531, 'American beech', 7.288],
    [375, 'paper birch', 6.293],
    [621, 'yellow-poplar', 5.109],
  ])('%d %s, wood and bark: %d kg', (code, _name, expected) => {
    expect(kilograms(code, 'wood_and_bark')).toBeCloseTo(expected, 3);
  });

  it.each([
    [802, 'white oak', 13.079],
    [833, 'northern red oak', 13.784],
    [746, 'quaking aspen', 10.65],
  ])('%d %s weighs %d kg green', (code, _name, expected) => {
    const wood = findLogWood(code);
    expect(wood).toBeDefined();
    if (wood) expect(volume * 1000 * logGreenDensity(wood)).toBeCloseTo(expected, 2);
  });

  it('takes 13.079 kg of green white oak for 7.651 kg dry', () => {
    expect(given(logDryGramsFromGreen(802, 13_079)) / 1000).toBeCloseTo(7.651, 3);
  });

  it.each(logWoods.map((wood) => [wood.fiaCode, wood.name.en, wood] as const))(
    '%d %s: both densities give the printed green to dry ratio',
    (_code, _name, wood) => {
      expect(logGreenDensity(wood) / logDryDensity(wood, 'wood_and_bark')).toBeCloseTo(
        wood.greenToDryRatio,
        3,
      );
    },
  );

  it('holds every tree once', () => {
    expect(logWoods).toHaveLength(35 - 2);
    expect(new Set(logWoods.map((wood) => wood.fiaCode)).size).toBe(logWoods.length);
  });

  it('takes the mean of two end areas for a tapered log', () => {
    expect(given(taperedLogVolumeCubicMetres(127, 127, 1016))).toBeCloseTo(volume, 12);
    const tapered = given(taperedLogVolumeCubicMetres(150, 100, 1000));
    expect(tapered).toBeCloseTo((Math.PI / 4) * ((0.15 ** 2 + 0.1 ** 2) / 2), 12);
  });

  it('says what is missing', () => {
    expectReason(logDryGramsFromVolume(1, volume), 'log-wood-unknown');
    expectReason(logDryGramsFromVolume(802, 0), 'log-size-missing');
    expectReason(logDryGramsFromGreen(802, 0), 'wet-mass-missing');
    expectReason(logVolumeCubicMetres(0, 1000), 'log-size-missing');
  });
});
