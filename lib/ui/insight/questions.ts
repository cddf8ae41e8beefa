/** Questions that have a page under /questions, by the last part of its address, in the order of the list. */
export const questions = [
  'watch',
  'methods',
  'sites',
  'next',
  'lots',
  'origins',
  'losses',
  'treatments',
  'costs',
  'records',
] as const;
export type Question = (typeof questions)[number];
