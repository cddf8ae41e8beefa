import { describe, expect, it } from 'vitest';
import { type BatchFacts, type DerivedComponent, deriveBatch } from '@/lib/growing/derive-batch';

const straw: DerivedComponent = {
  role: 'substrate',
  materialId: 'straw',
  methodId: 'bath',
  methodKind: 'hot_water_bath',
  grams: 10_000,
  massStage: 'before_treatment',
  asReceived: { percent: 12, source: 'measured' },
  drainedPercent: 70,
};
const husk: DerivedComponent = {
  ...straw,
  materialId: 'husk',
  grams: 5_000,
  asReceived: { percent: 11, source: 'measured' },
  drainedPercent: 65,
};

function facts(changes: Partial<BatchFacts> = {}): BatchFacts {
  return {
    containerKind: 'bag',
    unitCount: 20,
    inoculatedOn: '2026-04-01',
    components: [straw],
    spawnGrams: [1_200],
    filledGrams: 29_330,
    moisture: { source: 'measured', percent: 70 },
    log: { woodCode: null, diameterMm: null, lengthMm: null, greenGrams: null },
    window: { contaminationDays: 28, yieldDays: 90 },
    ...changes,
  };
}

describe('the dry mass of a batch', () => {
  it("is 8.80 kg for 29.33 kg filled at 70 %, never with the lot's 12 %", () => {
    const batch = deriveBatch(facts());
    expect(batch).toMatchObject({ dryGrams: 8_799, dryMassFrom: 'filled_mass', dryAssumed: false });
  });

  it('is 8.80 kg for 10 kg of straw at 12 % before treatment', () => {
    const batch = deriveBatch(facts({ filledGrams: null, moisture: { source: 'none', percent: null } }));
    expect(batch).toMatchObject({ dryGrams: 8_800, dryMassFrom: 'mass_before_treatment', wetGrams: null });
  });

  it('goes by the road that assumes nothing when the other one does', () => {
    const batch = deriveBatch(facts({ moisture: { source: 'assumed', percent: null } }));
    expect(batch).toMatchObject({ dryMassFrom: 'mass_before_treatment', dryGrams: 8_800, dryAssumed: false });
    expect(batch).toMatchObject({ moisturePercent: 70, moistureSource: 'assumed' });
  });

  it('is unknown, not smaller, when one part was not weighed', () => {
    const parts = [straw, { ...husk, grams: null }];
    const batch = deriveBatch(
      facts({ components: parts, filledGrams: null, moisture: { source: 'none', percent: null } }),
    );
    expect(batch).toMatchObject({ dryGrams: null, dryMassFrom: 'none', dryAssumed: false });
  });

  it('takes a mass filled by parts as the mass filled of the whole', () => {
    const parts = [
      { ...straw, grams: 20_000, massStage: 'filled' as const },
      { ...husk, grams: 9_330, massStage: 'filled' as const },
    ];
    const batch = deriveBatch(facts({ components: parts, filledGrams: null }));
    expect(batch).toMatchObject({ wetGrams: 29_330, dryGrams: 8_799, dryMassFrom: 'filled_mass' });
  });

  it('never takes parts weighed as filled for parts weighed before treatment', () => {
    const parts = [{ ...straw, massStage: 'filled' as const }];
    const batch = deriveBatch(facts({ components: parts, moisture: { source: 'none', percent: null } }));
    expect(batch).toMatchObject({ dryGrams: null, dryMassFrom: 'none' });
  });
});

describe('a moisture to assume', () => {
  it('of a mix is its water over its mass: straw at 70 % with husk at 65 %', () => {
    // 8.80 kg dry straw fills as 29.333 kg, 4.45 kg dry husk as 12.714 kg: 28.798 of 42.048 kg is water.
    const batch = deriveBatch(
      facts({ components: [straw, husk], moisture: { source: 'assumed', percent: null } }),
    );
    expect(batch.moisturePercent).toBe(68.49);
  });

  it('is none for a soaked material without a default: the lot is drier than what was filled', () => {
    const parts = [{ ...straw, drainedPercent: null, grams: null }];
    const batch = deriveBatch(facts({ components: parts, moisture: { source: 'assumed', percent: null } }));
    expect(batch).toMatchObject({ moistureSource: 'none', moisturePercent: null, dryGrams: null });
  });

  it('of an untreated material without a default is its moisture as received', () => {
    const chips = { ...straw, methodKind: 'untreated' as const, drainedPercent: null, grams: null };
    const batch = deriveBatch(facts({ components: [chips], moisture: { source: 'assumed', percent: null } }));
    expect(batch).toMatchObject({ moisturePercent: 12, dryAssumed: true });
  });
});

describe('method, material, spawn and days of a batch', () => {
  it('are mixed when parts differ, additives left out', () => {
    const limed = { ...husk, methodId: 'lime' };
    expect(deriveBatch(facts({ components: [straw, limed] }))).toMatchObject({
      methodId: null,
      mixedMethod: true,
      materialId: null,
      mixedMaterial: true,
    });
    const gypsum = { ...husk, methodId: 'untreated', role: 'additive' as const };
    expect(deriveBatch(facts({ components: [straw, gypsum] }))).toMatchObject({
      methodId: 'bath',
      mixedMethod: false,
      materialId: 'straw',
    });
  });

  it('have no spawn mass as soon as one share was not weighed', () => {
    expect(deriveBatch(facts({ spawnGrams: [600, 600] })).spawnGrams).toBe(1_200);
    expect(deriveBatch(facts({ spawnGrams: [600, null] })).spawnGrams).toBeNull();
    expect(deriveBatch(facts({ spawnGrams: [] })).spawnGrams).toBeNull();
  });

  it('are judged on the days that the window gives', () => {
    expect(deriveBatch(facts())).toMatchObject({
      contaminationAssessedOn: '2026-04-29',
      yieldAssessedOn: '2026-06-30',
    });
  });
});
