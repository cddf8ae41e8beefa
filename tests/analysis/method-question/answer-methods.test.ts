import { describe, expect, it } from 'vitest';
import { answerMethods } from '@/lib/analysis/method-question/answer-methods';
import type { MethodsAnswer } from '@/lib/analysis/method-question/methods-answer';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { truths } from '@/seed/story/truths';
import { fitHere, storyData } from '../adjusted/story-data';
import type { StoryBatch } from '../adjusted/story-facts';

function ask(arrange?: (batches: StoryBatch[]) => StoryBatch[]): Promise<MethodsAnswer> {
  const { batches, raw, asOf } = storyData(arrange);
  return answerMethods(
    {
      batches,
      raw: raw.methods,
      followUps: [],
      curveDays: 56,
      levelledOut: { material: false, season: false },
      asOf,
    },
    fitHere,
  );
}

const answer = await ask();
const pair = (first: string, second: string) => {
  const found = answer.pairs.find((one) => one.first === first && one.second === second);
  if (found === undefined) throw new Error(`no pair ${first}, ${second}`);
  return found;
};

describe('which method works, sites being equal', () => {
  it('finds that lime loses about six more bags in a hundred than the bath, where the raw table says fewer', () => {
    const { rawPoints, points, verdict } = pair('cold_lime_soak', 'hot_water_bath');
    expect(rawPoints).toBeLessThan(0);
    expect(verdict).toBe('more');
    if (points.kind !== 'figure' || points.interval.kind !== 'interval') throw new Error('no figure');
    expect(points.value).toBeGreaterThan(4);
    expect(points.value).toBeLessThan(8);
    expect(points.interval.low).toBeGreaterThan(0);
    expect(points.interval.high).toBeLessThan(13);
  });

  it('makes that pair the answer, and names the tidy sites that hid it', () => {
    expect(answer.headline).not.toBeNull();
    const { first, second, why } = answer.pairs[answer.headline ?? -1] ?? pair('', '');
    expect([first, second]).toEqual(['cold_lime_soak', 'hot_water_bath']);
    expect(why).toMatchObject({ kind: 'sites', method: 'cold_lime_soak', sitesLose: 'less' });
    if (why?.kind !== 'sites') throw new Error('no sites');
    expect(why.siteIds).toContain('BRIAR');
  });

  it('holds the planted effects of all methods in its intervals', () => {
    const { methodLogit, baseLogit } = truths;
    const rate = (method: keyof typeof methodLogit) =>
      100 / (1 + Math.exp(-(baseLogit + methodLogit[method])));
    for (const { first, second, points } of answer.pairs) {
      if (points.kind !== 'figure' || points.interval.kind !== 'interval') throw new Error('no figure');
      const truth = rate(first as 'steam') - rate(second as 'steam');
      expect(points.interval.low).toBeLessThan(truth);
      expect(points.interval.high).toBeGreaterThan(truth);
    }
  });

  it('says what would tell two methods apart where it cannot', () => {
    const unclear = answer.pairs.filter(({ verdict }) => verdict === 'cannot-tell');
    expect(unclear.length).toBeGreaterThan(0);
    for (const { would } of unclear) expect(would).not.toBeNull();
  });

  it('counts total losses as nothing in the efficiency it compares', () => {
    const ferment = pair('cold_ferment', 'hot_water_bath');
    expect(ferment.yieldVerdict).toBe('fewer');
    expect(ferment.croppedPercent?.high).toBeLessThan(0);
  });

  it('gives the same answer to the last digit in whatever order the batches come', async () => {
    const shuffled = await ask((batches) => seededRandom(7).shuffle([...batches]));
    expect(JSON.stringify(shuffled.pairs)).toBe(JSON.stringify(answer.pairs));
    expect(shuffled.siteOdds).toEqual(answer.siteOdds);
    const byMethod = (one: MethodsAnswer) =>
      [...one.methods].sort((a, b) => a.method.localeCompare(b.method));
    expect(byMethod(shuffled)).toEqual(byMethod(answer));
  });
});
