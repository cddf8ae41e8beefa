import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { massUnits } from '@/lib/ui/form/mass-units';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { NotThere } from '@/lib/ui/page/not-there';
import { siteSelect } from '@/lib/ui/sites/site-select';
import { addressWith } from '@/lib/ui/table/address-with';
import { siteFirst } from '../../../site-first';
import { allocateTreatmentAction } from '../../actions';

export default async function AllocateTreatmentPage({
  params,
  searchParams,
}: PageProps<'/treatments/[id]/allocate'>) {
  const { id } = await params;
  const address = await searchParams;
  const actor = await requireActor('coordinator');
  const { run, found } = await readAs(actor, async (context) => ({
    run: await getTreatment(context, id, new Date()),
    found: await listFormSites(context, { asked: address.siteId }),
  }));
  if (!run) return <NotThere />;
  const t = await getTranslations('treatments');
  const { sites, other } = await siteFirst(found, addressWith(`/treatments/${id}/allocate`, address, {}));
  const others = sites.filter((site) => site.id !== run.site.id);
  return (
    <RecordForm
      action={allocateTreatmentAction}
      heading={t('allocateHeading', { code: run.code })}
      fields={[
        siteSelect({ sites: others, other }, sentenceCase(t('fields.siteId'))),
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
      values={{ id: newId(), treatmentRunId: id, ...(found.many ? { siteId: others[0]?.id ?? '' } : {}) }}
      submitLabel={t('allocateSubmit')}
      words={await loadFormWords()}
    >
      <p>{t('allocateIntro')}</p>
    </RecordForm>
  );
}
