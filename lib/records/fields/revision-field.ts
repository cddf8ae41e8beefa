import { z } from 'zod';

/** The revision that a correction was made from; a stale one is answered as a conflict. */
export const revisionField = z.coerce.number('missing').int('not-whole').positive('not-whole');
