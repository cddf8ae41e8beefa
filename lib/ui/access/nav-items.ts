import type { Route } from 'next';
import type { MembershipRole } from '@/lib/database/generated/enums';
import type { NavItem } from '../page/nav-links';

const pages = {
  today: '/today',
  comparison: '/comparison',
  questions: '/questions',
  batches: '/batches',
  weighings: '/weighings',
  treatments: '/treatments',
  trials: '/trials',
  substrateLots: '/substrate-lots',
  spawnLots: '/spawn-lots',
  sites: '/sites',
  people: '/people',
  settings: '/settings',
  programme: '/programme',
  reports: '/reports',
} as const satisfies Record<string, string>;

type Page = keyof typeof pages;

const pagesOf: Record<MembershipRole, readonly Page[]> = {
  coordinator: [
    'comparison',
    'questions',
    'batches',
    'weighings',
    'treatments',
    'trials',
    'substrateLots',
    'spawnLots',
    'sites',
    'people',
    'settings',
    'programme',
    'reports',
  ],
  member: [
    'today',
    'batches',
    'weighings',
    'treatments',
    'trials',
    'substrateLots',
    'spawnLots',
    'sites',
    'programme',
    'reports',
  ],
  funder: ['reports', 'trials'],
};

/** The pages of a role, first page first. What a page shows is decided by the data layer, not here. */
export function navItems(role: MembershipRole, words: (page: Page) => string): NavItem[] {
  return pagesOf[role].map((page) => ({ href: pages[page] as Route, label: words(page) }));
}
