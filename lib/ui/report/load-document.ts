import { getLocale } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { ReportDocument } from '@/lib/report/document/report-document';
import { buildDocument, type ReportToTell } from './document/build-document';
import { reportTongue } from './document/report-tongue';

/** A report in the words of whoever is signed in. */
export async function loadDocument(actor: Actor, report: ReportToTell): Promise<ReportDocument> {
  const { language, massUnit, networkTimeZone } = actor;
  const locale = await getLocale();
  return buildDocument(report, await reportTongue({ language, locale, massUnit, timeZone: networkTimeZone }));
}
