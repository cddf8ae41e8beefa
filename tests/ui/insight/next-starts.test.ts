import { describe, expect, it } from 'vitest';
import type { NextChoice, NextPart, NextVerdict, Outlook } from '@/lib/analysis/next-question/next-answer';
import { nextStarts, startAddress } from '@/lib/ui/insight/next-starts';

const bath = { methodId: 'bath', kind: 'hot_water_bath' } as Outlook;
const lime = { methodId: 'lime', kind: 'cold_lime_soak' } as Outlook;
const told: NextVerdict = { kind: 'told', by: 'yield', leader: 'bath', equal: ['lime'], worse: [] };

/** What a site begins with whose answer is the bath, where four batches of `methodId` narrow the widest difference so. */
function starts(methodId: string, from: number, to: number, verdict = told) {
  const teaching: NextChoice['teaching'] = {
    ...{ kind: 'lessons', batches: 4, pair: ['bath', 'lime'], by: 'yield' },
    lessons: [{ methodId, from, to }],
  };
  const { recommended, teaches } = nextStarts({
    verdict,
    teaching,
    outlooks: [lime, bath],
  } as unknown as NextChoice);
  return [recommended?.methodId, teaches?.methodId];
}

describe('what a site begins with', () => {
  it('is the method of the answer, and not one that teaches nothing', () => {
    expect(starts('lime', 4.71, 4.7)).toEqual(['bath', undefined]);
    expect(starts('lime', 0.14, 0.12)).toEqual(['bath', undefined]);
  });

  it('is the method of the answer first and another that teaches enough beside it', () => {
    expect(starts('lime', 4.7, 3.9)).toEqual(['bath', 'lime']);
  });

  it('is one method where what is advised teaches most as well', () => {
    expect(starts('bath', 4.7, 3.9)).toEqual(['bath', undefined]);
  });

  it('is what teaches most where nothing can be advised yet', () => {
    expect(starts('lime', 4.7, 3.9, { kind: 'cannot', reason: 'too-thin' })).toEqual([undefined, 'lime']);
  });

  it('begins at its treatment, and an untreated batch at once', () => {
    const part = { siteId: 'mill', container: 'bag', usualUnits: 20 } as NextPart;
    expect(startAddress({ speciesId: 'oyster' }, part, bath)).toBe('/treatments/new?method=bath&siteId=mill');
    const untreated = { methodId: 'none', kind: 'untreated' } as const;
    expect(startAddress({ speciesId: 'oyster' }, part, untreated)).toBe(
      '/batches/new?container=bag&siteId=mill&speciesId=oyster&unitCount=20',
    );
  });
});
