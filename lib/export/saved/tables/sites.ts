import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { savedTable } from '../saved-table';

type Row = Awaited<ReturnType<typeof listCountedSites>>[number];

/** The list of sites. */
export const sites = savedTable<Row>(
  [
    { key: 'siteCode', kind: 'text', blank: 'never', cell: (row) => row.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.name },
    { key: 'siteKind', kind: 'choice', words: 'siteKind', blank: 'never', cell: (row) => row.kind },
    { key: 'timeZone', kind: 'text', blank: 'never', cell: (row) => row.timeZone },
    { key: 'openedOn', kind: 'date', blank: 'notRecorded', cell: (row) => row.openedOn },
    { key: 'siteClosedOn', kind: 'date', blank: 'notYet', cell: (row) => row.closedOn },
    { key: 'batchCount', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.batchCount },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
  ],
  async function* (context, query) {
    yield await listCountedSites(context, siteSearchInput.parse(query));
  },
);
