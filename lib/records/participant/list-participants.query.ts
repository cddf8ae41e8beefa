import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { type ProgrammeFilter, programmeRowsPerPage } from '../programme/programme-filter.input';
import { participantInclude, participantView } from './participant-view';

/** Participants that the actor may see, last added first, a page at a time; erased ones are not listed. */
export async function listParticipants({ db }: ReadContext, filter: ProgrammeFilter) {
  const after = filter.after !== null && isId(filter.after) ? filter.after : null;
  const rows = await db.participant.findMany({
    where: {
      voidedAt: null,
      erasedAt: null,
      ...(filter.site === null ? {} : { siteId: filter.site }),
      ...(filter.name === null
        ? {}
        : { contact: { is: { name: { contains: filter.name, mode: 'insensitive' } } } }),
      ...(after === null ? {} : { id: { lt: after } }),
    },
    include: participantInclude,
    orderBy: { id: 'desc' },
    take: programmeRowsPerPage + 1,
  });
  const shown = rows.slice(0, programmeRowsPerPage);
  return {
    participants: shown.map(participantView),
    next: rows.length > programmeRowsPerPage ? shown.at(-1)?.id : undefined,
  };
}
