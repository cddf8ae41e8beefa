import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getReport, type ReportView } from '@/lib/report/get-report.query';

/** The report that an address names, for a coordinator's pages about it. */
export async function loadCoordinatorsReport(
  id: string,
): Promise<{ actor: Actor; report: ReportView | undefined }> {
  const actor = await requireActor('coordinator');
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  return { actor, report };
}
