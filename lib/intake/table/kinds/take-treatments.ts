import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { Moment } from '@/lib/records/fields/moment-field';
import type { KeyedRecord } from '../known-keys';
import { codeForm } from '../plain-words';
import { setTaker } from '../set-taker';
import type { TakenRow, Taker, TakeSettings } from '../taker';
import { bringTreatmentInput, bringTreatments } from './bring-treatment';
import { lentRuns } from './lent-runs';
import { rawTreatment } from './raw-treatment';

const byTheClock = (moment: Moment) =>
  moment.kind === 'local' ? `${moment.date} ${moment.time}` : moment.at.toISOString();

/** A run is the same by its code, site, method and start; one without a code by the others. */
async function readKeys({ db, actor }: WriteContext, siteIds: readonly string[]): Promise<KeyedRecord[]> {
  const rows = await db.$queryRaw<{ id: string; code: string; rest: string }[]>`
    select r.id::text, r.code,
      concat_ws(' ', r.site_id, r.method_id, to_char(r.started_at at time zone s.time_zone, 'YYYY-MM-DD HH24:MI')) as rest
    from public.treatment_run r join public.site s on s.network_id = r.network_id and s.id = r.site_id
    where r.network_id = ${actor.networkId}::uuid and r.site_id = any(${siteIds}::uuid[])`;
  return rows.flatMap(({ id, code, rest }) => [
    { key: `code ${codeForm(code)} ${rest}`, id },
    { key: rest, id },
  ]);
}

export function takeTreatments(settings: TakeSettings): Taker {
  const own = setTaker(
    bringTreatmentInput,
    {
      make: bringTreatments,
      raw: (values, { siteId }) => rawTreatment(values, siteId),
      scopeOf: ({ siteId }) => siteId,
      keyOf: ({ code, siteId, methodId, startedAt }) => {
        const rest = [siteId, methodId, byTheClock(startedAt)].join(' ');
        return code === null ? rest : `code ${codeForm(code)} ${rest}`;
      },
      readKeys,
    },
    settings,
  );
  const lent = lentRuns(settings.usedUp);
  return {
    atOnce: own.atOnce,
    take: async (context, rows) => {
      const answers: TakenRow[] = [];
      const owned: number[] = [];
      for (const [at, { values }] of rows.entries()) {
        const there = await lent(context, values);
        if (there === undefined) owned.push(at);
        else answers[at] = { kind: 'there', recordIds: [there] };
      }
      const taken = await own.take(
        context,
        owned.flatMap((at) => rows[at] ?? []),
      );
      for (const [index, at] of owned.entries()) {
        const answer = taken[index];
        if (answer) answers[at] = answer;
      }
      return answers;
    },
  };
}
