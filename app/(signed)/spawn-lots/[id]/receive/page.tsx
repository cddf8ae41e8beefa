import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { getSpawnLot } from '@/lib/records/spawn-lot/get-spawn-lot.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { receiptFields } from '@/lib/ui/lots/receipt-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { receiveSpawnAction } from '../../actions';

export default async function ReceivePage({ params, searchParams }: PageProps<'/spawn-lots/[id]/receive'>) {
  const { id } = await params;
  const address = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const { lot, found } = await readAs(actor, async (context) => ({
    lot: await getSpawnLot(context, id),
    found: await listFormSites(context, { asked: address.siteId }),
  }));
  if (!lot || lot.voided !== null) return <NotThere />;
  const { sites, other } = await siteFirst(found, addressWith(`/spawn-lots/${id}/receive`, address, {}));
  const t = await getTranslations('lots');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={receiveSpawnAction}
      heading={t('receiveHeading', { code: lot.code })}
      fields={
        await receiptFields({
          lotField: 'spawnLotId',
          site: { sites, other },
          days: await recentDays(today),
          massUnit: actor.massUnit,
        })
      }
      values={{
        id: newId(),
        spawnLotId: id,
        receivedOn__quick: today,
        siteId: sites.length === 1 ? (sites[0]?.id ?? '') : '',
      }}
      submitLabel={t('submitReceive')}
      words={await loadFormWords()}
    />
  );
}
