import { currentActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { progressOf } from '@/lib/intake/table/view-file';

/** How far the work on a table is. */
export async function GET(_request: Request, { params }: RouteContext<'/api/import/[id]'>) {
  const headers = { 'cache-control': 'no-store' };
  const actor = await currentActor();
  if (!actor) return new Response(null, { status: 401, headers });
  const { id } = await params;
  const progress = await readAs(actor, (context) => progressOf(context, id, new Date()));
  return progress ? Response.json(progress, { headers }) : new Response(null, { status: 404, headers });
}
