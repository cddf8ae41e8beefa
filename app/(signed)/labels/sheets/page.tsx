import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listLabelSheets } from '@/lib/records/label/list-label-sheets.query';
import { sheetNames } from '@/lib/ui/labels/sheet-names';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function SheetsPage() {
  const actor = await requireActor('coordinator', 'member');
  const sheets = await readAs(actor, listLabelSheets);
  const t = await getTranslations('labels');
  const { size } = await sheetNames(actor.massUnit);
  return (
    <>
      <Heading text={t('ownSheets')} />
      <p>{t('ownIntro')}</p>
      {sheets.length === 0 ? (
        <EmptyState text={t('noSheets')} />
      ) : (
        <DataTable
          caption={t('ownSheets')}
          rows={sheets}
          rowKey={(sheet) => sheet.id}
          columns={[
            { key: 'name', header: t('columns.name'), cell: (sheet) => sheet.name },
            {
              key: 'page',
              header: t('columns.page'),
              cell: (sheet) => size(sheet.pageWidthMm, sheet.pageHeightMm),
            },
            {
              key: 'label',
              header: t('columns.label'),
              cell: (sheet) => size(sheet.labelWidthMm, sheet.labelHeightMm),
            },
            { key: 'grid', header: t('columns.grid'), cell: (sheet) => `${sheet.columns} × ${sheet.rows}` },
            {
              key: 'change',
              header: t('columns.change'),
              cell: (sheet) =>
                sheet.own ? (
                  <>
                    <Link href={`/labels/sheets/${sheet.id}/correct` as Route}>{t('correct')}</Link>{' '}
                    <Link href={`/void/label-sheet/${sheet.id}?back=/labels/sheets` as Route}>
                      {t('take')}
                    </Link>
                  </>
                ) : (
                  ''
                ),
            },
          ]}
        />
      )}
      <p>
        <ButtonLink href={'/labels/sheets/new' as Route} plain>
          {t('newSheet')}
        </ButtonLink>
      </p>
      <p>
        <Link href={'/labels' as Route}>{t('back')}</Link>
      </p>
    </>
  );
}
