import { describe, expect, it } from 'vitest';
import type { JudgedRun } from '@/lib/analysis/treatment-question/judged-run';
import { shortMethods } from '@/lib/analysis/treatment-question/short-methods';
import { methodDefaults } from '@/lib/growing/method-defaults';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { storySites } from '@/seed/story/sites';
import { truths } from '@/seed/story/truths';
import { storyToday } from '../adjusted/story-data';
import { storyRuns } from './story-runs';

const windows = new Map<string, TreatmentWindow | null>(
  methodDefaults.map(({ kind, window }) => [kind, window]),
);

/** Runs of the bath, oldest first; the part of the least time that each held. */
const bath = (...shares: readonly (number | null)[]): JudgedRun[] =>
  shares.map((heldShare, at) => ({
    id: `run ${at}`,
    code: `run ${at}`,
    siteId: 'mill-lane',
    methodId: 'hot_water_bath',
    startedOn: `2026-03-${String(at + 1).padStart(2, '0')}`,
    standing: heldShare === null ? 'unknown' : heldShare < 1 ? 'outside' : heldShare > 2 ? 'long' : 'well',
    heldShare,
    startCelsius: 12,
  }));
const told = (runs: readonly JudgedRun[]) => shortMethods(runs, windows);

describe('a method that a site’s own runs did not hold', () => {
  it('is the short bath of the demo at its site, and nothing anywhere else', () => {
    const runs = storyRuns(storyToday);
    const found = storySites.flatMap(({ code }) =>
      told(runs.filter(({ siteId }) => siteId === code)).map((one) => ({ code, ...one })),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      code: truths.shortBath.site,
      methodId: 'hot_water_bath',
      latestHeld: false,
    });
    expect(found[0]?.outside).toBe(found[0]?.judged);
    expect(found[0]?.judged).toBeGreaterThan(20);
    expect(found[0]?.heldMinutes).toBeLessThan(60);
  });

  it('is told from five runs that can be judged, of which half did not hold', () => {
    expect(told(bath(0.7, 0.7, 0.7, 0.7))).toEqual([]);
    expect(told(bath(0.7, 0.7, 0.7, 0.7, null))).toEqual([]);
    expect(told(bath(0.7, 0.7, 0.7, 0.7, 0.7))).toMatchObject([{ judged: 5, outside: 5, unknown: 0 }]);
    expect(told(bath(0.7, 0.7, 0.7, 1.5, 1.5, 1.5, null))).toMatchObject([
      { judged: 6, outside: 3, unknown: 1 },
    ]);
    expect(told(bath(0.7, 0.7, 1.5, 1.5, 1.5))).toEqual([]);
  });

  it('goes by what held its window and lasted too long as by what held', () => {
    expect(told(bath(0.7, 0.7, 2.5, 2.5, 2.5))).toEqual([]);
  });

  it('tells how long the latest run held that fell short, by day, and whether one has held since', () => {
    expect(told(bath(0.2, 0.3, 0.4, 0.5, 0.75).reverse())).toMatchObject([
      { heldMinutes: 45, latestHeld: false },
    ]);
    expect(told(bath(0.2, 0.3, 0.4, 0.5, 1.5))).toMatchObject([{ heldMinutes: 30, latestHeld: true }]);
  });
});
