import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readerLocale } from '@/lib/base/reader-locale';
import { todayInZone } from '@/lib/growing/calendar-date';
import { isId } from '@/lib/records/fields/id-field';
import { getSale } from '@/lib/records/sale/get-sale.query';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { massValues } from '@/lib/ui/form/mass-units';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { moneyFieldText } from '@/lib/ui/format/money-text';
import { NotThere } from '@/lib/ui/page/not-there';
import { saleFields } from '@/lib/ui/programme/sale-fields';
import { correctSaleAction } from '../../actions';

export default async function CorrectSalePage({ params }: PageProps<'/programme/sales/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  if (!isId(id)) return <NotThere />;
  const read = await readAs(actor, async (context) => ({
    sale: await getSale(context, id),
  }));
  const { sale } = read;
  if (!sale || sale.voided !== null) return <NotThere />;
  const t = await getTranslations('programme');
  const days = await recentDays(todayInZone(actor.networkTimeZone, new Date()));
  return (
    <RecordForm
      action={correctSaleAction}
      heading={t('sales.correct')}
      fields={
        await saleFields({
          form: { kind: 'correct' },
          days,
          massUnit: actor.massUnit,
          currency: sale.price.currency,
        })
      }
      values={{
        id,
        revision: String(sale.revision),
        outlet: sale.outlet,
        amount: moneyFieldText(sale.price, readerLocale(actor)),
        customers: sale.customers === null ? '' : String(sale.customers),
        note: sale.note ?? '',
        ...dateValues('soldOn', sale.soldOn),
        ...massValues('mass', sale.grams, actor),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
