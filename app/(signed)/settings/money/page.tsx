import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readerLocale } from '@/lib/base/reader-locale';
import { getMoney } from '@/lib/records/settings/get-money.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { moneyFieldText } from '@/lib/ui/format/money-text';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { NotThere } from '@/lib/ui/page/not-there';
import { changeMoneyAction } from './actions';

export default async function MoneyPage() {
  const actor = await requireActor('coordinator');
  const money = await readAs(actor, getMoney);
  if (!money) return <NotThere />;
  const t = await getTranslations('programme.money');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const { currency, labourMinorPerHour, revision } = money;
  const names = new Intl.DisplayNames(await getLocale(), { type: 'currency' });
  return (
    <RecordForm
      action={changeMoneyAction}
      heading={t('heading')}
      fields={[
        { kind: 'hidden', name: 'revision' },
        {
          kind: 'select',
          name: 'currency',
          label: label('fields.currency'),
          options: Intl.supportedValuesOf('currency').map((value) => ({
            value,
            label: `${value} – ${names.of(value) ?? value}`,
          })),
        },
        { kind: 'decimal', name: 'labourPerHour', label: label('fields.labourPerHour'), optional: true },
        { kind: 'text', name: 'reason', label: label('fields.reason') },
      ]}
      values={{
        revision: String(revision),
        currency,
        labourPerHour:
          labourMinorPerHour === null
            ? ''
            : moneyFieldText({ minor: labourMinorPerHour, currency }, readerLocale(actor)),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    >
      <p>{t('intro')}</p>
    </RecordForm>
  );
}
