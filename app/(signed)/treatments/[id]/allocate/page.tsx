import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { listSites } from '@/lib/records/site/list-sites.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { massUnits } from '@/lib/ui/form/mass-units';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { NotThere } from '@/lib/ui/page/not-there';
import { allocateTreatmentAction } from '../../actions';

export default async function AllocateTreatmentPage({ params }: PageProps<'/treatments/[id]/allocate'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const { run, sites } = await readAs(actor, async (context) => ({
    run: await getTreatment(context, id, new Date()),
    sites: await listSites(context),
  }));
  if (!run) return <NotThere />;
  const t = await getTranslations('treatments');
  const others = sites.filter((site) => site.id !== run.site.id);
  return (
    <RecordForm
      action={allocateTreatmentAction}
      heading={t('allocateHeading', { code: run.code })}
      fields={[
        {
          kind: 'select',
          name: 'siteId',
          label: sentenceCase(t('fields.siteId')),
          options: others.map((site) => ({ value: site.id, label: site.name })),
        },
        {
          kind: 'mass',
          name: 'mass',
          label: sentenceCase(t('fields.mass')),
          units: massUnits(actor.massUnit),
          optional: true,
        },
        { kind: 'hidden', name: 'treatmentRunId' },
        { kind: 'hidden', name: 'id' },
      ]}
      values={{ id: newId(), treatmentRunId: id }}
      submitLabel={t('allocateSubmit')}
      words={await loadFormWords()}
    >
      <p>{t('allocateIntro')}</p>
    </RecordForm>
  );
}
