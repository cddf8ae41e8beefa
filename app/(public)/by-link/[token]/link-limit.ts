import { rateLimit } from '@/lib/intake/rate-limit';

/** A reader opens a report and its files a few times; a programme that tries addresses opens thousands. */
const perLink = rateLimit(60, 0.5);
/** Addresses that open nothing, all together: nobody can guess 192 bits, but asking costs the database a look. */
const wrongOnes = rateLimit(120, 2);

export const takeOpening = (token: string): number => perLink.take(token, Date.now());
export const takeWrongOpening = (): number => wrongOnes.take('all', Date.now());
