import { findCountedSites } from '@/lib/records/site/find-counted-sites.query';
import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { countOpen } from '@/lib/records/today/count-open.query';
import { query } from './operation-rows';
import { now } from './world';

/** What is open, and what was ever begun, by site: each only of the sites that the asker may see. */
export const openRows = [
  query(
    'records/site/list-counted-sites.query',
    'yy---',
    (c) => listCountedSites(c),
    (sites, w) => sites.some(({ id, batchCount }) => id === w.people.millLane && batchCount > 0),
  ),
  query(
    'records/site/find-counted-sites.query',
    'yy---',
    (c) => findCountedSites(c, siteSearchInput.parse({})),
    ({ sites }, w) => sites.some(({ id, batchCount }) => id === w.people.millLane && batchCount > 0),
  ),
  query(
    'records/today/count-open.query',
    'yy---',
    (c) => countOpen(c, now, { most: 0 }),
    (counts, w) => counts?.sites.some(({ siteId }) => siteId === w.people.millLane) ?? false,
  ),
];
