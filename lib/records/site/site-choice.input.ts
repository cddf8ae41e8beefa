import { z } from 'zod';
import { siteSearchInput } from './site-search.input';

/**
 * What a site is looked for: a filter of a list, a form that records something, or one with which something begins to
 * grow, which is not at a site that is closed.
 */
export const sitePurposes = ['filter', 'record', 'start'] as const;

export type SitePurpose = (typeof sitePurposes)[number];

/** A search among sites on the way from one page to another, in its address. */
export const siteChoiceInput = siteSearchInput.extend({
  siteFor: z.enum(sitePurposes).catch('filter'),
});

export type SiteChoice = z.output<typeof siteChoiceInput>;
