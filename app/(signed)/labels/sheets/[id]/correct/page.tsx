import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listLabelSheets } from '@/lib/records/label/list-label-sheets.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { sheetFields, sheetValues } from '@/lib/ui/labels/sheet-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctLabelSheetAction } from '../../actions';

export default async function CorrectSheetPage({ params }: PageProps<'/labels/sheets/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const sheets = await readAs(actor, listLabelSheets);
  const sheet = sheets.find((one) => one.id === id && one.own);
  if (!sheet) return <NotThere />;
  const t = await getTranslations('labels');
  return (
    <RecordForm
      action={correctLabelSheetAction}
      heading={t('correctSheet', { name: sheet.name })}
      fields={[...(await sheetFields()), ...(await correctionFields())]}
      values={await sheetValues(sheet)}
      submitLabel={t('saveSheet')}
      words={await loadFormWords()}
    />
  );
}
