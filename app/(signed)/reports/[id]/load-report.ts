import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import type { ReportDocument } from '@/lib/report/document/report-document';
import { getReport, type ReportView } from '@/lib/report/get-report.query';
import { loadDocument } from '@/lib/ui/report/load-document';

/** The report that an address names, as whoever is signed in reads it; undefined when it is not there or not theirs. */
export async function loadReport(
  id: string,
): Promise<{ actor: Actor; report: ReportView; document: ReportDocument } | undefined> {
  const actor = await requireActor();
  const report = isId(id) ? await readAs(actor, (context) => getReport(context, id)) : undefined;
  return report && { actor, report, document: await loadDocument(actor, report) };
}
