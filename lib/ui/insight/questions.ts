/** Questions that have a page under /questions, by the last part of its address, in the order of the list. */
export const questions = ['methods', 'sites', 'lots', 'treatments'] as const;
export type Question = (typeof questions)[number];
