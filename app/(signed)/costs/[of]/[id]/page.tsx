import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { costSubjects, pricedLots } from '@/lib/records/cost/cost.input';
import { getCost } from '@/lib/records/cost/get-cost.query';
import { getLotPrice } from '@/lib/records/cost/get-lot-price.query';
import { isId } from '@/lib/records/fields/id-field';
import { costFields, lotPriceFields } from '@/lib/ui/costs/cost-fields';
import { costValues, lotPriceValues } from '@/lib/ui/costs/cost-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { noteCostAction, noteLotPriceAction } from './actions';

export default async function CostPage({ params }: PageProps<'/costs/[of]/[id]'>) {
  const { of: asked, id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const subject = costSubjects.find((one) => one === asked);
  const lot = pricedLots.find((one) => one === asked);
  if (!isId(id)) return <NotThere />;
  const found = await readAs(actor, async (context) => ({
    cost: subject && (await getCost(context, subject, id)),
    price: lot && (await getLotPrice(context, lot, id)),
  }));
  const { cost, price } = found;
  const of = subject ?? lot;
  const view = cost ?? price;
  if (!of || !view) return <NotThere />;
  const t = await getTranslations('costs');
  const common = await getTranslations('common');
  const kept = cost?.note ?? price?.price ?? null;
  const standing = { currency: view.currency, changes: kept !== null };
  const frame = {
    heading: t(`heading.${of}`, { code: view.code }),
    submitLabel: t('submit'),
    words: await loadFormWords(),
    after: kept === null ? null : <Link href={`/history/${kept.id}`}>{common('history.link')}</Link>,
    children: <p>{t(`intro.${of}`)}</p>,
  };
  return cost ? (
    <RecordForm
      {...frame}
      action={noteCostAction}
      fields={await costFields(standing)}
      values={{ of, about: id, ...costValues(cost, actor) }}
    />
  ) : (
    <RecordForm
      {...frame}
      action={noteLotPriceAction}
      fields={await lotPriceFields(standing, actor.massUnit)}
      values={{ of, about: id, ...(price ? lotPriceValues(price, actor) : {}) }}
    />
  );
}
