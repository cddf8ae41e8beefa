import { getTranslations } from 'next-intl/server';
import { requirePerson } from '@/lib/access/current';
import { nextPath } from '@/lib/access/next-path';
import { listOwnNetworks } from '@/lib/access/open-network';
import { Heading } from '@/lib/ui/page/heading';
import { openNetworkAction } from './actions';

export default async function NetworksPage({ searchParams }: PageProps<'/networks'>) {
  const next = nextPath((await searchParams).next) ?? '';
  const person = await requirePerson();
  const networks = await listOwnNetworks(person);
  const t = await getTranslations('access.networks');
  return (
    <>
      <Heading text={t('heading')} />
      {networks.length === 0 ? <p>{t('none')}</p> : null}
      {networks.map((network) => (
        <form key={network.networkId} action={openNetworkAction}>
          <input type="hidden" name="networkId" value={network.networkId} />
          <input type="hidden" name="next" value={next} />
          <p>
            <button type="submit" className="button button-action">
              {t('open', { network: network.name })}
            </button>
          </p>
        </form>
      ))}
    </>
  );
}
