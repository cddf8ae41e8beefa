import { describe, expect, it } from 'vitest';
import { countedBatches } from '@/lib/analysis/adjusted/contamination-request';
import { answerWidths, type WidthsRequest } from '@/lib/analysis/fitting/chart-widths';
import { answerSites } from '@/lib/analysis/site-question/answer-sites';
import { designKey, widthsOf } from '@/lib/analysis/site-question/course-widths';
import { courseDesign, siteCourse } from '@/lib/analysis/site-question/site-course';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { fitHere, storyData } from '../adjusted/story-data';
import type { StoryBatch } from '../adjusted/story-facts';

const widthsHere = async (request: WidthsRequest) => answerWidths(request);

function ask(arrange?: (batches: StoryBatch[]) => StoryBatch[]) {
  const { batches, raw, asOf } = storyData(arrange);
  return answerSites({ batches, raw: raw.sites, asOf }, fitHere, widthsHere);
}

const answer = await ask();
const site = (siteId: string) => {
  const found = answer.sites.find((one) => one.siteId === siteId);
  if (found === undefined) throw new Error(`no site ${siteId}`);
  return found;
};

describe('how each site does', () => {
  it('sees that the site with the short bath loses more than a typical site would with its methods', () => {
    expect(site('TARN').verdict).toBe('more');
    // Sites differ in the story, but few by so much that it can be told with all fourteen looked at together.
    expect(answer.sites.filter(({ verdict }) => verdict !== 'alike').length).toBeLessThan(4);
  });

  it('shrinks each site towards what a typical site would get, and never past it', () => {
    for (const { raw, shrunk, typical } of answer.sites) {
      if (raw.kind !== 'figure' || shrunk.kind !== 'figure' || typical.kind !== 'figure') continue;
      const [outer, inner] = [raw.value - typical.value, shrunk.value - typical.value];
      if (Math.abs(outer) < 3) continue;
      expect(Math.sign(inner)).toBe(Math.sign(outer));
    }
  });

  it('holds sites against limits by chance alone and against how sites usually differ, which are wider', () => {
    const { funnel } = answer;
    if (funnel === null) throw new Error('no funnel');
    for (const { low, high, usualLow, usualHigh } of funnel.limits) {
      expect(usualLow).toBeLessThanOrEqual(low + 0.5);
      expect(usualHigh).toBeGreaterThan(high);
    }
    expect(funnel.places.filter(({ beyondChance }) => beyondChance !== null).length).toBeGreaterThan(3);
    expect(funnel.places.filter(({ beyondUsual }) => beyondUsual !== null).length).toBeLessThan(3);
  });

  it('gives the same answer in whatever order the batches come', async () => {
    const shuffled = await ask((batches) => seededRandom(3).shuffle(batches));
    const byId = (one: typeof answer) => [...one.sites].sort((a, b) => a.siteId.localeCompare(b.siteId));
    expect(byId(shuffled)).toEqual(byId(answer));
    expect(shuffled.funnel).toEqual(answer.funnel);
  });
});

describe("a site's own course", () => {
  const own = countedBatches(storyData().batches).filter(({ siteId }) => siteId === 'ELDER');
  const course = async (some: typeof own) => {
    const design = courseDesign(some, 0.05);
    const widths = await widthsOf(design ? [design] : [], widthsHere);
    return siteCourse(some, 0.05, design && widths.get(designKey(design)));
  };
  const all = (contaminated: (index: number) => number) =>
    own.map((batch, index) => ({ ...batch, contaminated: Math.min(batch.units, contaminated(index)) }));

  it('signals a change for the worse and says from which batch', async () => {
    const found = await course(all((index) => (index < own.length - 8 ? 2 : 14)));
    const signals = found?.points.flatMap(({ signal }, index) => (signal === 'above' ? [index] : [])) ?? [];
    expect(signals[0]).toBeGreaterThanOrEqual(own.length - 8);
    expect(signals[0]).toBeLessThan(own.length - 3);
  });

  it('is silent where nothing changes, and unknown from a handful of batches or without any loss', async () => {
    const steady = await course(all(() => 2));
    expect(steady?.points.every(({ signal }) => signal === null)).toBe(true);
    expect(await course(own.slice(0, 5))).toBeNull();
    expect(await course(all(() => 0))).toBeNull();
  });
});
