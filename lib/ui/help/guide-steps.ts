/** The steps of each role's one-page guide, in the order in which a newcomer needs them. */
export const guideSteps = {
  visitor: [{ words: 'signIn', href: '/sign-in' }, { words: 'askInvitation' }],
  member: [
    { words: 'today', href: '/today' },
    { words: 'treatment', href: '/treatments/new' },
    { words: 'startBatch', href: '/batches/new' },
    { words: 'sums', href: '/sums' },
    { words: 'look', href: '/quick/contamination' },
    { words: 'check', href: '/quick/check' },
    { words: 'weigh', href: '/quick/harvest' },
    { words: 'noSignal' },
    { words: 'bedsAndLogs' },
    { words: 'secondLife' },
    { words: 'correct' },
    { words: 'units', href: '/account' },
  ],
  coordinator: [
    { words: 'sites', href: '/sites' },
    { words: 'invite', href: '/people/invite' },
    { words: 'materials', href: '/substrate-lots' },
    { words: 'settings', href: '/settings' },
    { words: 'suitability', href: '/settings/suitability' },
    { words: 'compare', href: '/comparison' },
    { words: 'correct' },
    { words: 'report', href: '/reports' },
    { words: 'units', href: '/account' },
  ],
  funder: [
    { words: 'readReports', href: '/reports' },
    { words: 'protectedCells' },
    { words: 'units', href: '/account' },
  ],
} as const satisfies Record<string, readonly { readonly words: string; readonly href?: string }[]>;
