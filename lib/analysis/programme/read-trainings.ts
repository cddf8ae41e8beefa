import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Period } from '../production/read-production';

/** What the trainings of one site amount to in a period, so that a report can tell whom a number would give away. */
export type SiteTrainings = {
  readonly siteId: string;
  readonly trainings: number;
  /** Everybody in the room each time; where no head count was taken, those named who agreed to be counted. */
  readonly attendances: number;
  /** People named who agreed to be counted, each once at this site. */
  readonly people: number;
  /** Heads beyond those named: nobody knows whether some of them came twice. */
  readonly unnamedHeads: number;
};

export type TrainingsInPeriod = {
  readonly trainings: number;
  readonly attendances: number;
  /** People named who agreed to be counted, each once however many trainings and sites they came to. */
  readonly people: number;
  /** People reached are at least `people` and at most `people + unnamedHeads`. */
  readonly unnamedHeads: number;
  /** Named attendances left out since the person has not agreed to be counted and no head count holds them. */
  readonly leftOutWithoutConsent: number;
  readonly minutes: number;
  readonly bySite: readonly SiteTrainings[];
};

type TrainingRow = {
  readonly siteId: string;
  readonly headCount: number | null;
  readonly minutes: number | null;
  /** Named people who agreed to be counted, and how many were named in all. */
  readonly counted: readonly string[];
  readonly named: number;
};

/** Trainings held in a period, both days included: attendances, and people each once. */
export async function readTrainings(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<TrainingsInPeriod> {
  const rows = await db.$queryRaw<TrainingRow[]>`
    select t.site_id::text as "siteId", t.head_count as "headCount", t.minutes,
      coalesce(array_agg(p.id::text order by p.id) filter (where p.counted_on is not null), '{}') as counted,
      count(a.id)::int as named
    from training t
    left join training_attendance a on a.network_id = t.network_id and a.training_id = t.id and a.voided_at is null
    left join participant p on p.network_id = a.network_id and p.id = a.participant_id and p.voided_at is null
    where t.network_id = ${actor.networkId}::uuid and t.voided_at is null and t.held_on between ${from}::date and ${to}::date
    group by t.network_id, t.id order by t.site_id, t.id`;
  const sites = [...new Set(rows.map(({ siteId }) => siteId))];
  return {
    ...sumOf(rows),
    leftOutWithoutConsent: rows.reduce(
      (sum, row) => sum + (row.headCount === null ? row.named - row.counted.length : 0),
      0,
    ),
    minutes: rows.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
    bySite: sites.map((siteId) => ({ siteId, ...sumOf(rows.filter((row) => row.siteId === siteId)) })),
  };
}

function sumOf(rows: readonly TrainingRow[]) {
  const heads = rows.map(({ headCount, counted }) => ({
    attendances: headCount ?? counted.length,
    unnamed: Math.max(0, (headCount ?? 0) - counted.length),
  }));
  return {
    trainings: rows.length,
    attendances: heads.reduce((sum, one) => sum + one.attendances, 0),
    people: new Set(rows.flatMap(({ counted }) => counted)).size,
    unnamedHeads: heads.reduce((sum, one) => sum + one.unnamed, 0),
  };
}
