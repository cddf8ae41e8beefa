import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { currentActor, requirePerson } from '@/lib/access/current';
import { listOwnNetworks } from '@/lib/access/open-network';
import { readAs } from '@/lib/access/scoped-db';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { LeavingTold } from '@/lib/ui/leaving/leaving-told';
import { wordField } from '@/lib/ui/leaving/word-field';
import { leaveNetworkAction } from './actions';

export default async function LeavePage() {
  const person = await requirePerson();
  const actor = await currentActor();
  if (!actor && (await listOwnNetworks(person)).length > 0) redirect('/networks');
  const t = await getTranslations('leaving');
  const leaving = actor && (await readAs(actor, (context) => getLeaving(context, 'own')));
  return (
    <RecordForm
      action={leaveNetworkAction}
      heading={actor ? t('person.heading', { network: actor.networkName }) : t('person.headingAlone')}
      fields={[{ kind: 'hidden', name: 'networkId' }, await wordField()]}
      values={{ networkId: actor?.networkId ?? '' }}
      submitLabel={t('person.submit')}
      tone="bad"
      words={await loadFormWords()}
    >
      {actor && leaving ? (
        <LeavingTold
          leaving={leaving}
          archive="/account/leave/archive"
          lead={t('person.lead', { network: actor.networkName })}
        />
      ) : (
        <p className="lead">{t('person.leadAlone')}</p>
      )}
    </RecordForm>
  );
}
