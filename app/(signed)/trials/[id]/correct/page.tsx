import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { addressValues } from '@/lib/ui/form/address-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { trialFields } from '@/lib/ui/trials/trial-fields';
import { trialValues } from '@/lib/ui/trials/trial-values';
import { correctTrialAction } from '../../actions';
import { loadTrial } from '../load-trial';

export default async function CorrectTrialPage({ params, searchParams }: PageProps<'/trials/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const trial = await loadTrial(actor, id);
  if (trial?.state !== 'draft') return <NotThere />;
  const { choices, sites } = await readAs(actor, async (context) => ({
    choices: await listChoices(context),
    sites: await listSites(context),
  }));
  const t = await getTranslations('trials');
  const fields = await trialFields({ choices, sites, language: actor.language });
  return (
    <RecordForm
      action={correctTrialAction}
      heading={t('correctHeading', { title: trial.title })}
      fields={[...fields, ...(await correctionFields())]}
      values={{ ...(await trialValues(trial)), ...addressValues(fields, await searchParams) }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
    />
  );
}
