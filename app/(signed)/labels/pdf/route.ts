import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { environment } from '@/lib/base/environment';
import { labelPdf } from '@/lib/labels/print/label-pdf';
import { labelTexts } from '@/lib/ui/labels/label-texts';
import { loadLabelPrint } from '../load-label-print';

/** The sheet of labels that the address asks for, as a PDF; a wrong address goes to the page that says what is wrong. */
export async function GET(request: Request): Promise<Response> {
  const actor = await requireActor('coordinator', 'member');
  const { searchParams, search } = new URL(request.url);
  const address = Object.fromEntries(
    [...new Set(searchParams.keys())].map((key) => [key, searchParams.getAll(key)]),
  );
  const { view, outline, errors } = await loadLabelPrint(actor, address);
  if (errors.length > 0 || view.labels.length === 0) redirect(`/labels${search}` as Route);
  const codes = view.batches.map(({ code }) => code);
  const t = await getTranslations('labels');
  const pdf = await labelPdf({
    labels: await labelTexts(view, actor.language, environment().NEXTAUTH_URL),
    layout: view.sheet.layout,
    firstPlace: view.firstPlace,
    outline,
    title: t('documentTitle', { codes: codes.slice(0, 5).join(', ') }),
    language: actor.language,
  });
  const name = `labels-${codes[0]}${codes.length === 1 ? '' : `-and-${codes.length - 1}-more`}.pdf`;
  return new Response(pdf, {
    headers: {
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename="${name}"`,
      'cache-control': 'private, no-store',
    },
  });
}
