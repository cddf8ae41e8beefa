import 'server-only';
import { getTranslations } from 'next-intl/server';
import { readerLocale } from '@/lib/base/reader-locale';
import type { ReportDocument } from '@/lib/report/document/report-document';
import { type LinkForm, type OpenedLink, openLink } from '@/lib/report/link/open-link';
import { buildDocument } from '@/lib/ui/report/document/build-document';
import { reportTongue } from '@/lib/ui/report/document/report-tongue';
import { answerNothing } from './answer-nothing';
import { takeOpening } from './link-limit';

export type SharedReport = {
  readonly link: OpenedLink;
  readonly document: ReportDocument;
  readonly locale: string;
};

/** The report that a link opens in the link's language, noted in its log; undefined when it opens nothing. */
export async function loadShared(token: string, form: LinkForm): Promise<SharedReport | undefined> {
  const link = await openLink(token, form);
  if (!link) return undefined;
  const { language, region, timeZone } = link;
  const locale = readerLocale({ language, region });
  // A visitor has no choice of units; the records are in grams.
  const tongue = await reportTongue({ language, locale, massUnit: 'kg', timeZone });
  const document = buildDocument(link.report, tongue);
  return { link, document, locale };
}

/** Answers with a file of the report that a link opens, or says that it opens nothing. */
export async function answerShared(
  token: string,
  form: Exclude<LinkForm, 'page'>,
  file: (shared: SharedReport) => Promise<Response>,
): Promise<Response> {
  const wait = takeOpening(token);
  if (wait > 0) {
    const headers = { 'retry-after': String(wait), 'content-type': 'text/plain; charset=utf-8' };
    return new Response((await getTranslations('links'))('busy'), { status: 429, headers });
  }
  const shared = await loadShared(token, form);
  return shared ? file(shared) : answerNothing();
}
