import type { SharingLevel } from './agree-sharing.input';

/**
 * What holds while a site has said nothing: the other end of bags that moved may know the site by name, and a report counts
 * it without naming it. The columns of `sharing_agreement` and `app.shown_sites` say the same.
 */
export const defaultSharing: { readonly withMembers: SharingLevel; readonly withFunder: SharingLevel } = {
  withMembers: 'named',
  withFunder: 'anonymous',
};
