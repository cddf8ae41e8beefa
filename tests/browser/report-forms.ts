import { buildReport } from './build-report';
import type { FormPage } from './find-address';
import { wren } from './people';

/** Forms of a funder's report; its words can be changed while it is a draft. */
export const reportForms: readonly FormPage[] = [
  { route: '/reports/new', as: wren },
  {
    route: '/reports/[id]/words',
    as: wren,
    find: async (page) => `${await buildReport(page, `Words ${Date.now()}`)}/words`,
    // The title is the one required text.
    keeps: 'words.opening',
  },
  {
    route: '/reports/[id]/days',
    as: wren,
    find: async (page) => `${await buildReport(page, `Days ${Date.now()}`)}/days`,
  },
];
