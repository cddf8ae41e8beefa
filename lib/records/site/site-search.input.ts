import { z } from 'zod';
import { optionalTextField } from '../fields/text-field';

/** What is asked of a long list of sites, in its address; anything unreadable counts as not given. */
export const siteSearchInput = z.object({
  /** Part of the name or of the code. */
  name: optionalTextField(100).catch(null),
  /** From 1. */
  page: z.coerce.number().int().min(1).max(100_000).catch(1),
});

export type SiteSearch = z.output<typeof siteSearchInput>;
