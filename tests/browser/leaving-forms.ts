import { below, type FormPage } from './find-address';
import { ives, wren } from './people';

/** Forms about what a site shares, and about leaving. */
export const leavingForms: readonly FormPage[] = [
  { route: '/sites/[id]/sharing', as: ives, find: below('/sites', '/sharing') },
  { route: '/sites/[id]/leave', as: wren, find: below('/sites', '/leave') },
  { route: '/account/leave', as: ives, keeps: false },
  { route: '/people/[membershipId]/leave', as: wren, find: below('/people', '/leave') },
];
