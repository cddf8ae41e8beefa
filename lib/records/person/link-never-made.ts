/** Of invitations whose link nobody has seen: those of a table, until one is made. */
export const linkNeverMade = {
  origin: 'file_import',
  revision: 1,
  acceptedAt: null,
  voidedAt: null,
} as const;
