import type { FieldError, Question } from '@/lib/base/result';
import { questionBe, questionWeighing } from '@/lib/growing/yield-plausibility';
import type { WeighedBatch } from './weighed-batches';

// Common practice: fresh grams that one unit can give over its whole life, with a wide margin.
const mostGramsPerUnit = {
  bag: 60_000,
  bucket: 60_000,
  tray: 60_000,
  block: 60_000,
  log: 200_000,
  bed: 2_000_000,
} as const;

/** A mass that no such batch can have given: refused. */
export function impossibleYield(batch: WeighedBatch, grams: number): FieldError[] {
  const total = batch.earlierGrams + grams;
  return total > mostGramsPerUnit[batch.containerKind] * batch.unitCount
    ? [
        {
          field: 'fresh',
          code: 'too-much-for-batch',
          values: { code: batch.code, grams: total, units: batch.unitCount },
        },
      ]
    : [];
}

/** A mass that is possible but so rare that a slip of the scale or the decimal sign is likelier: asked about. */
export function implausibleYield(batch: WeighedBatch, grams: number): Question[] {
  const questions = [questionWeighing(grams, batch.liveUnits, batch.containerKind)];
  if (batch.dryGrams !== null && batch.dryGrams > 0 && batch.containerKind !== 'bed') {
    const bePercent = ((batch.earlierGrams + grams) / batch.dryGrams) * 100;
    const state = { container: batch.containerKind, isOyster: false, finished: false, recordedAsLost: false };
    questions.push(questionBe(bePercent, state));
  }
  return questions.flatMap((question) =>
    question === null
      ? []
      : [
          {
            field: 'fresh',
            code: question.code,
            values: {
              code: batch.code,
              limit: question.limit,
              given: Math.round(question.given),
              percent: Math.round(question.given),
            },
          },
        ],
  );
}
