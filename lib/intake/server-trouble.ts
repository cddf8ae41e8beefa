import 'server-only';
import { isUnavailable } from '@/lib/database/is-unavailable';

/**
 * Writes down an error that no person can mend and answers after how many seconds it is worth trying again: a few
 * where the database is away, a minute for a fault of our own.
 */
export function serverTrouble(what: string, error: unknown): number {
  const away = isUnavailable(error);
  const why =
    error instanceof Error ? (away ? error.message : (error.stack ?? error.message)) : String(error);
  console.error(JSON.stringify({ level: away ? 'warn' : 'error', what, why }));
  return away ? 5 : 60;
}
