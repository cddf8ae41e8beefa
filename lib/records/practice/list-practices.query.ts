import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { datedWhere, pageOf } from '../programme/dated-page';
import { type ProgrammeFilter, programmeRowsPerPage } from '../programme/programme-filter.input';
import { practiceInclude, practiceView } from './practice-view';

/** Practices taken up at the sites that the actor may see, latest first, a page at a time. */
export async function listPractices({ db }: ReadContext, filter: ProgrammeFilter) {
  const rows = await db.adoptedPractice.findMany({
    where: {
      ...datedWhere(filter, 'since'),
      ...(filter.practice === null ? {} : { practice: filter.practice }),
    },
    include: practiceInclude,
    orderBy: [{ since: 'desc' }, { id: 'desc' }],
    take: programmeRowsPerPage + 1,
  });
  const page = pageOf(rows, ({ id, since }) => ({ id, on: since }));
  return { practices: page.rows.map(practiceView), next: page.next };
}
