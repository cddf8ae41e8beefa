import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { ChooseBatches } from '@/lib/ui/labels/choose-batches';
import { printFields, printValues } from '@/lib/ui/labels/print-fields';
import { PrintForm } from '@/lib/ui/labels/print-form';
import { SheetPreview } from '@/lib/ui/labels/sheet-preview';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { loadLabelPrint } from './load-label-print';

export default async function LabelsPage({ searchParams }: PageProps<'/labels'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const { view, errors } = await loadLabelPrint(actor, address);
  const t = await getTranslations('labels');
  const locale = await getLocale();
  const ownSheets = (
    <p className="record-links">
      <Link href={'/labels/sheets' as Route}>{t('ownSheets')}</Link>
    </p>
  );
  if (view.batches.length === 0) {
    const open = batchFilterInput.parse({ state: 'open' });
    const { batches } = await readAs(actor, (context) => listBatches(context, open, new Date()));
    return (
      <>
        <Heading text={t('heading')} />
        {batches.length === 0 ? (
          <EmptyState text={t('noBatches')}>
            <ButtonLink href={'/batches/new' as Route}>{t('start')}</ButtonLink>
          </EmptyState>
        ) : (
          <ChooseBatches batches={batches} language={actor.language} />
        )}
        {ownSheets}
      </>
    );
  }
  const { batches, labels, firstPlace, nextPlace, sheet } = view;
  const pages = Math.ceil((labels.length + firstPlace - 1) / (sheet.layout.columns * sheet.layout.rows));
  const seen = t('seen', { labels: labels.length, pages, place: firstPlace });
  const roll = sheet.layout.columns * sheet.layout.rows === 1;
  return (
    <>
      <PrintForm
        heading={t('headingOf', { codes: batches.map(({ code }) => code).join(', ') })}
        fields={await printFields(view, actor)}
        values={printValues(view, address)}
        errors={errors}
      >
        <ul className="plain-list labelled">
          {batches.map((batch) => (
            <li key={batch.id}>
              <Link href={`/batches/${batch.id}` as Route}>{batch.code}</Link>
              {`, ${batch.species[actor.language]}, ${formatDate(batch.inoculatedOn, locale)}, ${batch.site.name}`}
            </li>
          ))}
        </ul>
      </PrintForm>
      {labels.length === 0 ? null : (
        <section>
          <h2>{t('preview')}</h2>
          <p>
            {roll ? t('seenRoll', { labels: labels.length }) : seen}{' '}
            {roll || nextPlace === undefined ? '' : t('nextPlace', { place: nextPlace })}
          </p>
          {roll ? null : (
            <SheetPreview layout={sheet.layout} count={labels.length} firstPlace={firstPlace} alt={seen} />
          )}
          <p className="quiet">{t('printHint')}</p>
          <p className="quiet">{t('codeHint')}</p>
        </section>
      )}
      {ownSheets}
    </>
  );
}
