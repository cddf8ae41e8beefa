import type { FieldError, Question } from '@/lib/base/result';
import { isImpossibleHarvest, questionHarvest } from '@/lib/growing/question-harvest';
import type { WeighedBatch } from './weighed-batches';

/** A mass that no such batch can have given: refused. */
export function impossibleYield(batch: WeighedBatch, grams: number): FieldError[] {
  const values = { code: batch.code, grams: `${batch.earlierGrams + grams} g`, units: batch.unitCount };
  return isImpossibleHarvest(batch, grams) ? [{ field: 'fresh', code: 'too-much-for-batch', values }] : [];
}

/** A mass that is possible but so rare that a slip of the scale or the decimal sign is likelier: asked about. */
export function implausibleYield(batch: WeighedBatch, grams: number): Question[] {
  return questionHarvest(batch, grams).map(({ code, limit, given }) => ({
    field: 'fresh',
    code,
    values: {
      code: batch.code,
      limit: `${Math.round(limit)} g`,
      given: `${Math.round(given)} g`,
      percent: Math.round(given),
    },
  }));
}
