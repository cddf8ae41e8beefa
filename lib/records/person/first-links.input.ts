import { z } from 'zod';

/** Nothing is chosen: every invitation that never had a link gets one. */
export const firstLinksInput = z.object({});
