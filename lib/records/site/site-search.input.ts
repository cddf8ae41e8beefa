import { z } from 'zod';
import { optionalTextField } from '../fields/text-field';

/**
 * What is asked of a long list of sites, in its address; anything unreadable counts as not given. Other pages' names and
 * pages pass through the same address on the way to a site.
 */
export const siteSearchInput = z.object({
  /** Part of the name or of the code. */
  siteName: optionalTextField(100).catch(null),
  /** From 1. */
  sitePage: z.coerce.number().int().min(1).max(100_000).catch(1),
});

export type SiteSearch = z.output<typeof siteSearchInput>;
