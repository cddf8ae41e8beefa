import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readUsualRuns } from '@/lib/analysis/trials/read-usual-runs';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { addressValues } from '@/lib/ui/form/address-values';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { trialFields } from '@/lib/ui/trials/trial-fields';
import { UsualRunsNote } from '@/lib/ui/trials/usual-runs-note';
import { planTrialAction } from '../actions';

export default async function NewTrialPage({ searchParams }: PageProps<'/trials/new'>) {
  const actor = await requireActor('coordinator');
  const now = new Date();
  const { choices, sites, usual } = await readAs(actor, async (context) => ({
    choices: await listChoices(context),
    sites: await listSites(context),
    usual: await readUsualRuns(context, now),
  }));
  const t = await getTranslations('trials');
  const open = sites.filter(({ closedOn }) => closedOn === null);
  const fields = await trialFields({ choices, sites: open, language: actor.language });
  const today = todayInZone(actor.networkTimeZone, now);
  return (
    <RecordForm
      action={planTrialAction}
      heading={t('new')}
      fields={[...fields, { kind: 'hidden', name: 'id' }]}
      values={{
        id: newId(),
        outcome: 'contamination',
        powerPercent: '80',
        daysBetweenBlocks: '14',
        lateAfterDays: '14',
        ...(usual === undefined ? {} : { speciesId: usual.speciesId }),
        ...dateValues('startsOn', today),
        ...addressValues(fields, await searchParams),
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    >
      <p>{t('newIntro')}</p>
      {usual === undefined ? null : <UsualRunsNote usual={usual} actor={actor} />}
    </RecordForm>
  );
}
