import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { datedWhere, pageOf } from '../programme/dated-page';
import { type ProgrammeFilter, programmeRowsPerPage } from '../programme/programme-filter.input';

/** Trainings that the actor may see, latest first, a page at a time. */
export async function listTrainings({ db }: ReadContext, filter: ProgrammeFilter) {
  const rows = await db.training.findMany({
    where: { ...datedWhere(filter, 'heldOn'), ...(filter.topic === null ? {} : { topic: filter.topic }) },
    include: {
      site: { select: { name: true } },
      _count: { select: { attendances: { where: { voidedAt: null } } } },
    },
    orderBy: [{ heldOn: 'desc' }, { id: 'desc' }],
    take: programmeRowsPerPage + 1,
  });
  const page = pageOf(rows, ({ id, heldOn }) => ({ id, on: heldOn }));
  const trainings = page.rows.map(({ id, title, topic, heldOn, headCount, site, _count }) => ({
    ...{ id, title, topic, siteName: site.name },
    heldOn: asCalendarDate(heldOn),
    attendances: headCount ?? _count.attendances,
  }));
  return { trainings, next: page.next };
}
