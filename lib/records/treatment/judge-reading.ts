import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { Method, Site, TreatmentRun } from '@/lib/database/generated/client';
import type { ReadingPlace } from '@/lib/database/generated/enums';
import { questionPh } from '@/lib/growing/question-ph';
import { momentInstant } from '../fields/moment-instant';
import { methodWindow } from './method-window';
import { isFuture } from './prepare-treatment';
import type { addReadingInput } from './treatment.input';

type Fields = Omit<z.output<typeof addReadingInput>, 'id' | 'treatmentRunId'>;

/** A run as a reading of it needs it. */
export type ReadRunOf = Pick<TreatmentRun, 'startedAt'> & {
  readonly site: Pick<Site, 'timeZone'>;
  readonly method: Method;
};

export type ReadingColumns = {
  readonly readAt: Date;
  readonly place: ReadingPlace;
  readonly celsius: number | null;
  readonly ph: number | null;
};

/**
 * The columns of a reading of a run, or what stands against it; asks the database nothing. A pH above saturated lime
 * water at that temperature is asked about.
 */
export function judgeReading(
  { now, confirmed }: Pick<WriteContext, 'now' | 'confirmed'>,
  { celsius, ph, ...input }: Fields,
  run: ReadRunOf,
): Result<ReadingColumns> {
  if (celsius === null && ph === null) return invalid('celsius', 'reading-empty');
  const readAt = input.readAt === null ? now : momentInstant(input.readAt, run.site.timeZone);
  if (isFuture(readAt, now)) return invalid('readAt', 'future-date');
  if (readAt < run.startedAt) return invalid('readAt', 'ends-before-start');
  const window = methodWindow(run.method);
  if (ph !== null && window?.kind === 'lime' && !confirmed.has('ph-above-saturation')) {
    const code = questionPh(ph, celsius, window)?.code;
    if (code === 'above-saturation' || code === 'very-high')
      return { kind: 'confirm', questions: [{ field: 'ph', code: 'ph-above-saturation', values: { ph } }] };
  }
  return ok({
    readAt,
    place: input.place ?? (window?.kind === 'heat' ? 'load_middle' : 'water'),
    celsius,
    ph,
  });
}
