import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { momentInstant } from '../fields/moment-instant';
import type { startTreatmentInput } from './treatment.input';

type Fields = Omit<z.output<typeof startTreatmentInput>, 'id' | 'code'>;

const clockSkewMinutes = 5;

/** An instant a phone's clock may run ahead of ours, but not by more than a few minutes. */
export function isFuture(instant: Date, now: Date): boolean {
  return instant.getTime() > now.getTime() + clockSkewMinutes * 60_000;
}

/** Checks a run against its site and method and answers its columns. */
export async function prepareTreatment({ db, now }: WriteContext, input: Fields) {
  const site = await db.site.findFirst({ where: { id: input.siteId, voidedAt: null } });
  const method = await db.method.findFirst({ where: { id: input.methodId, voidedAt: null } });
  if (!site || !method) return notFound;
  if (method.kind === 'untreated') return invalid('methodId', 'nothing-to-treat');
  if (input.lime !== null && method.kind !== 'cold_lime_soak') return invalid('lime', 'lime-soak-only');
  const startedAt = momentInstant(input.startedAt, site.timeZone);
  const endedAt = input.endedAt === null ? null : momentInstant(input.endedAt, site.timeZone);
  if (isFuture(startedAt, now)) return invalid('startedAt', 'future-date');
  if (endedAt !== null && isFuture(endedAt, now)) return invalid('endedAt', 'future-date');
  if (endedAt !== null && endedAt < startedAt) return invalid('endedAt', 'ends-before-start');
  const columns = {
    siteId: site.id,
    methodId: method.id,
    startedAt,
    endedAt,
    waterMillilitres: input.water,
    limeGrams: input.lime,
    loadGrams: input.load,
    loadCelsiusAtSpawning: input.loadCelsiusAtSpawning,
    note: input.note,
  };
  const answer: Result<typeof columns> = ok(columns);
  return answer;
}
