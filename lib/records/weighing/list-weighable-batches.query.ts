import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, TrimState } from '@/lib/database/generated/enums';
import { todayInZone } from '@/lib/growing/calendar-date';
import { proposeFlush } from '@/lib/growing/propose-flush';
import { asCalendarDate } from '../fields/stored-date';
import { sitesHere } from '../site/sites-here';

const mostListed = 200;

/** A batch that can be picked from, with the flush that a picking today would probably be. */
export type WeighableBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly today: string;
  readonly trimDefault: TrimState;
  readonly speciesNameEn: string;
  readonly speciesNameEs: string;
  readonly containerKind: ContainerKind;
  readonly inoculatedOn: string;
  readonly closed: boolean;
  readonly flush: number;
};

/** Open batches of the actor's sites, latest picked first, then latest inoculated; `also` is listed though closed. */
export async function listWeighableBatches(
  context: ReadContext,
  options: { now: Date; also?: readonly string[]; siteId?: string },
): Promise<WeighableBatch[]> {
  const open = { closedOn: null, ...(await sitesHere(context)) };
  const rows = await context.db.batch.findMany({
    where: {
      voidedAt: null,
      AND: [options.also ? { OR: [open, { id: { in: [...options.also] } }] } : open],
      ...(options.siteId ? { siteId: options.siteId } : {}),
    },
    include: {
      site: true,
      species: true,
      weighingLines: { where: { voidedAt: null, weighing: { voidedAt: null } }, include: { weighing: true } },
    },
    orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
    take: mostListed,
  });
  const views = rows.map((row) => {
    const earlier = row.weighingLines.map((line) => ({
      on: asCalendarDate(line.weighing.weighedOn),
      flush: line.flush,
    }));
    const today = todayInZone(row.site.timeZone, options.now);
    const lastPicked =
      earlier
        .map(({ on }) => on)
        .sort()
        .at(-1) ?? '';
    const view: WeighableBatch = {
      id: row.id,
      code: row.code,
      siteId: row.siteId,
      siteName: row.site.name,
      timeZone: row.site.timeZone,
      today,
      trimDefault: row.site.trimDefault,
      speciesNameEn: row.species.nameEn,
      speciesNameEs: row.species.nameEs,
      containerKind: row.containerKind,
      inoculatedOn: asCalendarDate(row.inoculatedOn),
      closed: row.closedOn !== null,
      flush: proposeFlush(earlier, today),
    };
    return { view, lastPicked };
  });
  views.sort(
    (a, b) =>
      b.lastPicked.localeCompare(a.lastPicked) || b.view.inoculatedOn.localeCompare(a.view.inoculatedOn),
  );
  return views.map(({ view }) => view);
}
