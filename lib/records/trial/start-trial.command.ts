import 'server-only';
import { randomBytes } from 'node:crypto';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { roundOn } from '@/lib/growing/trial-round';
import { asCalendarDate, asDate } from '../fields/stored-date';
import { drawAllocation } from './draw-allocation';
import type { startTrialInput } from './trial.input';

/** Draws the list of a trial and closes its plan. Starting twice draws once. */
export async function startTrial(
  context: WriteContext,
  input: z.output<typeof startTrialInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin, now } = context;
  const { id } = input;
  if (actor.role !== 'coordinator') return notFound;
  const [locked] = await db.$queryRaw<{ started: boolean }[]>`
    select started_at is not null as started from trial
    where network_id = ${actor.networkId}::uuid and id = ${id}::uuid and voided_at is null for update`;
  if (locked === undefined) return notFound;
  if (locked.started) return ok({ id });
  const trial = await db.trial.findFirstOrThrow({
    where: { id },
    include: {
      arms: { where: { voidedAt: null }, orderBy: { place: 'asc' } },
      sites: { where: { voidedAt: null }, include: { site: true } },
    },
  });
  const { blocks, arms, daysBetweenBlocks } = trial;
  if (blocks === null) return invalid('', 'trial-size-missing');
  const seed = origin === 'seed' && input.seed !== null ? input.seed : randomBytes(8).toString('hex');
  const today = todayInZone(actor.networkTimeZone, now);
  const rounds = { startsOn: asCalendarDate(trial.startsOn), daysBetweenBlocks, today };
  const sites = trial.sites.map(({ site }) => site).sort((a, b) => (a.code < b.code ? -1 : 1));
  const armIds = arms.map((arm) => arm.id);
  await db.trialSlot.createMany({
    data: drawAllocation(seed, sites, arms.length, blocks).flatMap(({ arm, block, ...slot }) => {
      const armId = armIds[arm - 1];
      if (armId === undefined) return [];
      const plannedOn = asDate(roundOn(rounds, block));
      const own = { networkId: actor.networkId, trialId: id, origin, createdById: actor.personId };
      return [{ ...own, ...slot, id: newId(), armId, block, plannedOn }];
    }),
  });
  await db.trial.updateMany({
    where: { id, startedAt: null },
    data: { seed, startedAt: now, startsOn: asDate(roundOn(rounds, 1)) },
  });
  return ok({ id });
}
