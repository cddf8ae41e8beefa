/** More sites than this nobody finds in a list that rolls on a phone: one is looked for by name. */
export const mostSitesListed = 100;
