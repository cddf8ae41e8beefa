import { describe, expect, it } from 'vitest';
import type { NextPart } from '@/lib/analysis/next-question/next-answer';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { storyData } from '../adjusted/story-data';
import { askStory } from './story-next';

// Nobody in the story leaves a bag untreated.
const usable = ['hot_water_bath', 'cold_lime_soak', 'cold_ferment', 'untreated'] as const;
const answer = await askStory({ season: '4', usable });
const ofSite = (siteId: string): NextPart => {
  const part = answer.sites.find((one) => one.siteId === siteId);
  if (part === undefined) throw new Error(`no site ${siteId}`);
  return part;
};
const firstOf = (siteId: string) => {
  const [choice] = ofSite(siteId).choices;
  if (choice === undefined) throw new Error(`nothing to choose at ${siteId}`);
  return choice;
};
const figureOf = (siteId: string, method: string, key: 'loss' | 'yield') => {
  const figure = firstOf(siteId).outlooks.find(({ methodId }) => methodId === method)?.[key];
  if (figure?.kind !== 'figure') throw new Error(`no ${key} of ${method} at ${siteId}`);
  return figure;
};

describe('what a site should do next', () => {
  it('expects less of cold fermentation than of the bath, as the story planted it, at nearly every site', () => {
    const told = answer.sites.filter(({ choices: [first] }) => {
      const verdict = first?.verdict;
      return verdict?.kind === 'told' && verdict.worse.includes('cold_ferment');
    });
    expect(told.length).toBeGreaterThan(8);
  });

  it('expects a site that limes to lose fewer with the bath, though it never used one', () => {
    expect(firstOf('GORSE').outlooks.find(({ methodId }) => methodId === 'hot_water_bath')?.siteBatches).toBe(
      0,
    );
    expect(figureOf('GORSE', 'hot_water_bath', 'loss').value).toBeLessThan(
      figureOf('GORSE', 'cold_lime_soak', 'loss').value,
    );
  });

  it('expects more losses where the bath is too short than at another site with it', () => {
    expect(figureOf('TARN', 'hot_water_bath', 'loss').value).toBeGreaterThan(
      1.5 * figureOf('ELDER', 'hot_water_bath', 'loss').value,
    );
  });

  it('gives whole units of a usual batch as the limits of what it would lose', () => {
    const [choice] = ofSite('MILL').choices;
    for (const { units, loss } of choice?.outlooks ?? []) {
      if (units === null || loss.kind !== 'figure' || loss.interval.kind !== 'interval') continue;
      expect(loss.interval.high).toBeCloseTo((100 * units.high) / ofSite('MILL').usualUnits, 8);
      expect(units.low).toBeLessThanOrEqual(units.high);
    }
  });

  it('says how much a few more batches would narrow the widest open difference, most of the lesson first', () => {
    const { teaching, verdict } = firstOf('GORSE');
    if (teaching.kind !== 'lessons' || verdict.kind !== 'told') throw new Error('nothing is open');
    // What the site has not used is what it would learn from.
    expect(teaching.lessons[0]?.methodId).toBe('hot_water_bath');
    expect(teaching.pair).toContain(verdict.leader);
    for (const [at, { from, to }] of teaching.lessons.entries()) {
      expect(to).toBeLessThan(from);
      expect(to).toBeGreaterThanOrEqual(teaching.lessons[at - 1]?.to ?? 0);
    }
  });

  it('expects nothing of a method that nobody has used, and says how many batches there are', () => {
    const outlook = firstOf('MILL').outlooks.find(({ methodId }) => methodId === 'untreated');
    expect(outlook).toMatchObject({ loss: { kind: 'cannot' }, yield: { kind: 'cannot' }, units: null });
    expect(outlook?.knownBatches).toBe(0);
  });

  it('says of the batches it counts what the methods page says of the same: how many, and what was left out', () => {
    const raw = storyData().raw.methods.find(({ method }) => method === 'hot_water_bath');
    for (const [key, same] of [
      ['loss', raw?.contamination],
      ['yield', raw?.yield],
    ] as const) {
      const { n, leftOut } = figureOf('TARN', 'hot_water_bath', key);
      expect(leftOut).not.toEqual([]);
      expect({ n, leftOut }).toEqual({ n: same?.n, leftOut: same?.leftOut });
    }
  });

  it('says that all species and materials taught it, and never that rates of several were mixed', () => {
    const { marks } = figureOf('TARN', 'hot_water_bath', 'loss');
    expect(marks).toContain('learned-from-all');
    expect(marks).not.toContain('species-pooled');
    expect(marks).not.toContain('materials-pooled');
  });

  it('gives the same answer in whatever order the batches come', async () => {
    const shuffled = await askStory({
      season: '4',
      usable,
      arrange: (batches) => seededRandom(5).shuffle(batches),
    });
    expect(shuffled).toEqual(answer);
  });
});
