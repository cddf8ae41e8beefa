import 'server-only';
import type { z } from 'zod';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { Method, Site } from '@/lib/database/generated/client';
import { momentInstant } from '../fields/moment-instant';
import type { startTreatmentInput } from './treatment.input';

type Fields = Omit<z.output<typeof startTreatmentInput>, 'id' | 'code'>;

const clockSkewMinutes = 5;

/** An instant a phone's clock may run ahead of ours, but not by more than a few minutes. */
export function isFuture(instant: Date, now: Date): boolean {
  return instant.getTime() > now.getTime() + clockSkewMinutes * 60_000;
}

/** Sites and methods of runs, as far as the actor may see them and they are not voided. */
export type RunLookups = {
  readonly sites: ReadonlyMap<string, Site>;
  readonly methods: ReadonlyMap<string, Method>;
};

export async function runLookups({ db }: ReadContext, inputs: readonly Fields[]): Promise<RunLookups> {
  const some = (ids: readonly string[]) => ({ id: { in: [...new Set(ids)] }, voidedAt: null });
  const sites = await db.site.findMany({ where: some(inputs.map(({ siteId }) => siteId)) });
  const methods = await db.method.findMany({ where: some(inputs.map(({ methodId }) => methodId)) });
  return {
    sites: new Map(sites.map((site) => [site.id, site])),
    methods: new Map(methods.map((method) => [method.id, method])),
  };
}

/** Checks a run against its site and method and answers its columns. */
export async function prepareTreatment(context: WriteContext, input: Fields) {
  return judgeTreatment(context, input, await runLookups(context, [input]));
}

/** The same by what was looked up beforehand. */
export function judgeTreatment(
  { now }: Pick<WriteContext, 'now'>,
  input: Fields,
  { sites, methods }: RunLookups,
) {
  const site = sites.get(input.siteId);
  const method = methods.get(input.methodId);
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
