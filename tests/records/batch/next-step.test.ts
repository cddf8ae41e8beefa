import { describe, expect, it } from 'vitest';
import { nextStep } from '@/lib/records/batch/next-step';

const cropping = {
  containerKind: 'bag',
  closed: false,
  live: 20,
  notInspected: false,
  inoculatedOn: '2025-12-18',
  lastHarvestOn: '2026-09-07',
  lastEntryOn: '2026-09-07',
  colonised: true,
  colonisedDays: 21,
  firstHarvestDays: 30,
  today: '2026-11-25',
} as const;

describe('the next step of a batch that has cropped', () => {
  it('is to close it once nothing was written down for a month', () => {
    expect(nextStep(cropping)).toBe('close');
    expect(nextStep({ ...cropping, lastEntryOn: '2026-11-01' })).toBe('weigh');
  });

  it('is not to close logs and beds that only rest for a season', () => {
    expect(nextStep({ ...cropping, containerKind: 'log' })).toBe('weigh');
    expect(nextStep({ ...cropping, containerKind: 'bed' })).toBe('weigh');
    expect(nextStep({ ...cropping, containerKind: 'log', today: '2027-09-07' })).toBe('close');
  });

  it('is none for a closed batch, and closing when no unit stands', () => {
    expect(nextStep({ ...cropping, closed: true })).toBe('none');
    expect(nextStep({ ...cropping, live: 0 })).toBe('close');
  });
});
