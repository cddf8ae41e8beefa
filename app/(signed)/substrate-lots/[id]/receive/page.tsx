import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { getSubstrateLot } from '@/lib/records/substrate-lot/get-substrate-lot.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { receiptFields } from '@/lib/ui/lots/receipt-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { receiveSubstrateAction } from '../../actions';

export default async function ReceivePage({
  params,
  searchParams,
}: PageProps<'/substrate-lots/[id]/receive'>) {
  const { id } = await params;
  const address = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const { lot, found } = await readAs(actor, async (context) => ({
    lot: await getSubstrateLot(context, id),
    found: await listFormSites(context, { asked: address.siteId }),
  }));
  if (!lot || lot.voided !== null) return <NotThere />;
  const { sites, other } = await siteFirst(found, addressWith(`/substrate-lots/${id}/receive`, address, {}));
  const t = await getTranslations('lots');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={receiveSubstrateAction}
      heading={t('receiveHeading', { code: lot.code })}
      fields={
        await receiptFields({
          lotField: 'substrateLotId',
          site: { sites, other },
          days: await recentDays(today),
          massUnit: actor.massUnit,
        })
      }
      values={{
        id: newId(),
        substrateLotId: id,
        receivedOn__quick: today,
        siteId: sites.length === 1 ? (sites[0]?.id ?? '') : '',
      }}
      submitLabel={t('submitReceive')}
      words={await loadFormWords()}
    />
  );
}
