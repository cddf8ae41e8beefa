import { describe, expect, it } from 'vitest';
import { containerYield } from '@/lib/records/batch/container-yield';

const bed = {
  containerKind: 'bed',
  unitCount: 1,
  bedAreaCm2: 20_000,
  inoculatedOn: '2025-04-01',
  closedOn: null,
  freshGrams: 5_000,
  anyWeighed: true,
} as const;
const logs = { ...bed, containerKind: 'log', unitCount: 10, bedAreaCm2: null } as const;
const today = '2027-04-01';

describe('the yield of beds and logs', () => {
  it('is kilograms per square metre for a bed: 5 kg from 2 m² is 2.5', () => {
    expect(containerYield(bed, today)).toEqual({ bedYield: { kind: 'value', value: 2.5 }, logYield: null });
  });

  it('is grams per log per year for logs, up to the day they were closed', () => {
    const open = containerYield(logs, today).logYield;
    expect(open?.kind === 'value' && open.value).toBeCloseTo(5_000 / 10 / (730 / 365.2425), 6);
    const closed = containerYield({ ...logs, closedOn: '2026-04-01' }, today).logYield;
    expect(closed?.kind === 'value' && closed.value).toBeCloseTo(5_000 / 10 / (365 / 365.2425), 6);
  });

  it('is not nothing while an open bed has not been weighed, nor where nobody said that nothing was picked', () => {
    const unweighed = { ...bed, freshGrams: 0, anyWeighed: false };
    expect(containerYield(unweighed, today).bedYield).toMatchObject({ reason: 'no-harvest-yet' });
    const unsaid = { ...unweighed, freshGrams: null, closedOn: '2026-04-01' };
    expect(containerYield(unsaid, today).bedYield).toMatchObject({ reason: 'fresh-mass-missing' });
  });

  it('is neither for bags', () => {
    expect(containerYield({ ...bed, containerKind: 'bag' }, today)).toEqual({
      bedYield: null,
      logYield: null,
    });
  });
});
