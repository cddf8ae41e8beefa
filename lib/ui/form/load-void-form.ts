import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from './field-spec';

type VoidForm = {
  readonly heading: string;
  readonly fields: readonly FieldSpec[];
  readonly submitLabel: string;
  readonly tone: 'bad';
};

/** Everything a form to void a record needs but its action: spread it into `RecordForm`. */
export async function loadVoidForm(record: string): Promise<VoidForm> {
  const t = await getTranslations('common.voiding');
  return {
    heading: t('heading', { record }),
    fields: [
      { kind: 'prose', name: 'explain', text: t('explain') },
      { kind: 'paragraph', name: 'reason', label: t('reason'), hint: t('reasonHint') },
    ],
    submitLabel: t('submit'),
    tone: 'bad',
  };
}
