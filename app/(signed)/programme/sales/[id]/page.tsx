import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { formatMass } from '@/lib/growing/format-quantity';
import { pricePerMass } from '@/lib/growing/price-per-mass';
import { isId } from '@/lib/records/fields/id-field';
import { getSale } from '@/lib/records/sale/get-sale.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { formatMassWithTwin } from '@/lib/ui/format/mass-text';
import { formatMoney } from '@/lib/ui/format/money-text';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { RecordLinks } from '@/lib/ui/page/record-links';

export default async function SalePage({ params, searchParams }: PageProps<'/programme/sales/[id]'>) {
  const { id } = await params;
  const { saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const sale = isId(id) ? await readAs(actor, (context) => getSale(context, id)) : undefined;
  if (!sale) return <NotThere />;
  const t = await getTranslations('programme.sales');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  return (
    <>
      <Heading
        text={t('one', {
          mass: formatMass(sale.grams, actor.massUnit, locale),
          price: formatMoney(sale.price, locale),
        })}
      />
      {saved === 'yes' ? <Notice>{(await getTranslations('programme'))('saved')}</Notice> : null}
      <DefinitionList
        items={[
          { label: t('columns.soldOn'), value: formatDate(sale.soldOn, locale) },
          { label: t('columns.site'), value: sale.siteName },
          { label: t('columns.outlet'), value: words(`outletKind.${sale.outlet}`) },
          { label: t('columns.mass'), value: formatMassWithTwin(sale.grams, actor.massUnit, locale) },
          { label: t('columns.price'), value: formatMoney(sale.price, locale) },
          {
            label: t('columns.perUnit', { unit: actor.massUnit }),
            value: formatMoney(pricePerMass(sale.price, sale.grams, actor.massUnit), locale),
          },
          ...(sale.customers === null ? [] : [{ label: t('columns.customers'), value: sale.customers }]),
          ...(sale.note === null ? [] : [{ label: t('columns.note'), value: sale.note }]),
        ]}
      />
      <RecordLinks
        path={`/programme/sales/${id}`}
        kind="sale"
        id={id}
        voided={sale.voided}
        mayChange={true}
      />
    </>
  );
}
