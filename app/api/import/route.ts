import { currentActor } from '@/lib/access/current';
import { acceptTable } from '@/lib/intake/table/accept-table';

/** Takes a table from the form that chooses it and goes on to its page, or back with what was wrong. */
export function POST(request: Request): Promise<Response> {
  return acceptTable(request, currentActor);
}
