import { describe, expect, it } from 'vitest';
import type { SiteRuns, TreatmentsAnswer } from '@/lib/analysis/treatment-question/treatments-answer';
import { treatmentSentences } from '@/lib/ui/insight/treatment-sentences';
import { sentenceWords } from './sentence-words';

const site = (siteId: string, counts: Partial<SiteRuns>): SiteRuns => ({
  siteId,
  methodId: 'lime',
  runs: 20,
  outside: 0,
  long: 0,
  unknown: 0,
  drift: null,
  courses: [],
  ...counts,
});

const answerOf = (changes: Partial<TreatmentsAnswer>): TreatmentsAnswer => ({
  judgedRuns: 40,
  outsideRuns: 0,
  longRuns: 0,
  unknownRuns: 0,
  otherRuns: 0,
  standings: [],
  difference: null,
  sitesWithBoth: 0,
  seasons: [],
  starts: [],
  sites: [site('Gorse Hill', {}), site('Tarn Street', {})],
  windows: [],
  batchesWithoutRun: 0,
  asOf: '2026-11-26T12:00:00.000Z',
  ...changes,
});

const long = { longRuns: 1, sites: [site('Gorse Hill', { long: 1 }), site('Tarn Street', {})] };

describe('the answer about treatments', () => {
  it('says of which runs it speaks, in both languages', () => {
    const answer = answerOf({ outsideRuns: 3, sites: [site('Tarn Street', { outside: 3 })] });
    expect(treatmentSentences(answer, sentenceWords('en'))[0]).toBe(
      '3 of 40 runs that treated these batches, and whose readings tell, did not hold their window, all at Tarn Street.',
    );
    expect(treatmentSentences(answer, sentenceWords('es'))[0]).toBe(
      '3 de 40 tratamientos de estos lotes cuyas lecturas bastan no se mantuvieron en su ventana, siempre en Tarn Street.',
    );
  });

  it('tells runs longer than their window apart, in the words of the watch list and with their site', () => {
    expect(treatmentSentences(answerOf(long), sentenceWords('en'))).toEqual([
      'All 40 runs that treated these batches, and whose readings tell, held their window.',
      '1 of those that held lasted longer than its window allows, at Gorse Hill.',
    ]);
    expect(treatmentSentences(answerOf(long), sentenceWords('es'))[1]).toBe(
      '1 de los que se mantuvieron duró más de lo que permite su ventana, en Gorse Hill.',
    );
  });
});
