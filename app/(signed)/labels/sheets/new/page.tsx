import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { newId } from '@/lib/base/new-id';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sheetFields } from '@/lib/ui/labels/sheet-fields';
import { addLabelSheetAction } from '../actions';

const usual = { leftMm: '0', topMm: '0', gapAcrossMm: '0', gapDownMm: '0' };

export default async function NewSheetPage() {
  await requireActor('coordinator', 'member');
  const t = await getTranslations('labels');
  return (
    <RecordForm
      action={addLabelSheetAction}
      heading={t('newSheet')}
      fields={[...(await sheetFields()), { kind: 'hidden', name: 'id' }]}
      values={{ ...usual, id: newId() }}
      submitLabel={t('saveSheet')}
      words={await loadFormWords()}
    />
  );
}
