/** The steps of each role's one-page guide, in order, as keys of the catalogue. */
export const guideSteps = {
  visitor: ['signIn', 'askInvitation'],
  member: ['today', 'startBatch', 'look', 'weigh', 'correct'],
  coordinator: ['sites', 'invite', 'settings', 'compare', 'report'],
  funder: ['readReports', 'protectedCells'],
} as const;
