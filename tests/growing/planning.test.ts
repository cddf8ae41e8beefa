import { describe, expect, it } from 'vitest';
import { bathHeat } from '@/lib/growing/bath-heat';
import { bedLayerAmounts, usualBedLayers } from '@/lib/growing/bed-layers';
import { boxLitres, bucketLitres, cylinderLitres, layFlatBagLitres } from '@/lib/growing/container-volume';
import { wetBasisPercent } from '@/lib/growing/moisture-basis';
import { splitSharedMass } from '@/lib/growing/split-shared-mass';
import { expectReason, given } from './expect-value';

describe('heat for a bath', () => {
  const bath = {
    waterLitres: 100,
    loadWetGrams: 10_000,
    loadMoisture: given(wetBasisPercent(12)),
    startCelsius: 15,
    targetCelsius: 75,
    fuel: 'propane',
  } as const;

  it('adds up water, water in the straw and dry straw', () => {
    const heat = given(bathHeat(bath));
    expect(heat.heatKilowattHours).toBeCloseTo(((101.2 * 4.186 + 8.8 * 1.4) * 60) / 3600, 10);
    expect(heat.heatKilowattHours).toBeCloseTo(7.27, 2);
    expect(heat.fuelKilowattHours).toBeCloseTo(heat.heatKilowattHours / 0.45, 10);
    expect(heat.fuelAmount).toBeCloseTo(heat.fuelKilowattHours / 12.87, 10);
    expect(heat.fuelUnit).toBe('kg');
  });

  it('takes an efficiency of one’s own and needs nothing for no rise', () => {
    const own = given(bathHeat({ ...bath, efficiency: 1 }));
    expect(own.fuelKilowattHours).toBe(own.heatKilowattHours);
    expect(given(bathHeat({ ...bath, targetCelsius: 15 })).heatKilowattHours).toBe(0);
  });

  it('refuses cooling, boiling over and an impossible efficiency', () => {
    expectReason(bathHeat({ ...bath, targetCelsius: 10 }), 'out-of-range');
    expectReason(bathHeat({ ...bath, targetCelsius: 101 }), 'out-of-range');
    expectReason(bathHeat({ ...bath, startCelsius: Number.NaN }), 'out-of-range');
    expectReason(bathHeat({ ...bath, efficiency: 0 }), 'out-of-range');
    expectReason(bathHeat({ ...bath, waterLitres: -1 }), 'out-of-range');
  });
});

describe('layers of a bed', () => {
  it('gives volumes for one square metre from the ground up', () => {
    const layers = given(bedLayerAmounts(1));
    expect(layers.map(({ material }) => material)).toEqual([
      'wood_chips',
      'spawn',
      'wood_chips',
      'spawn',
      'straw',
    ]);
    expect(layers.map(({ litres }) => litres)).toEqual([25.4, 0.54, 50.8, 0.54, 50.8]);
    expect(layers.map(({ grams }) => grams)).toEqual([null, 270, null, 270, null]);
  });

  it('agrees with a trade page: 2.5 kg of spawn for 50 square feet', () => {
    const layers = given(bedLayerAmounts(50 * 0.09290304));
    const spawn = layers.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
    expect(spawn).toBeCloseTo(2508, 0);
  });

  it('takes cardboard below and chips on top', () => {
    const layers = given(bedLayerAmounts(2, usualBedLayers('cardboard', 'wood_chips')));
    expect(layers[0]).toEqual({ material: 'cardboard', litres: null, grams: null });
    expect(layers[4]).toEqual({ material: 'wood_chips', litres: 50.8, grams: null });
  });

  it('needs an area', () => {
    expectReason(bedLayerAmounts(0), 'area-missing');
    expectReason(bedLayerAmounts(Number.NaN), 'area-missing');
  });
});

describe('volumes of containers', () => {
  it('knows boxes, columns, buckets and bags lying flat', () => {
    expect(given(boxLitres(1000, 1000, 25.4))).toBeCloseTo(25.4, 10);
    expect(given(cylinderLitres(200, 500))).toBeCloseTo(15.708, 3);
    expect(given(bucketLitres(290, 290, 300))).toBeCloseTo(given(cylinderLitres(290, 300)), 10);
    expect(given(bucketLitres(300, 260, 370))).toBeCloseTo(22.82, 2);
    expect(given(layFlatBagLitres(Math.PI * 100, 500))).toBeCloseTo(given(cylinderLitres(200, 500)), 10);
  });

  it('needs every measure', () => {
    expectReason(boxLitres(1000, 0, 25), 'out-of-range');
    expectReason(cylinderLitres(200, Number.NaN), 'out-of-range');
  });
});

describe('a crate picked from several batches', () => {
  it('is split by live units in whole grams that add up', () => {
    expect(splitSharedMass(1000, [10, 20, 10])).toEqual([250, 500, 250]);
    expect(splitSharedMass(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(splitSharedMass(100, [1, 2])).toEqual([33, 67]);
    expect(splitSharedMass(7, [0, 5])).toEqual([0, 7]);
    expect(splitSharedMass(7, [0, 0])).toEqual([4, 3]);
    expect(splitSharedMass(7, [])).toEqual([]);
  });
});
