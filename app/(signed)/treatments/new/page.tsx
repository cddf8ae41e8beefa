import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { addressValues } from '@/lib/ui/form/address-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { nowValues } from '@/lib/ui/form/moment-values';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { FirstStep } from '@/lib/ui/page/first-step';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadSums } from '@/lib/ui/sums/load-sums';
import { addressWith } from '@/lib/ui/table/address-with';
import { MethodChips } from '@/lib/ui/treatments/method-chips';
import { treatmentFields } from '@/lib/ui/treatments/treatment-fields';
import { siteFirst } from '../../site-first';
import { startTreatmentAction } from '../actions';

export default async function NewTreatmentPage({ searchParams }: PageProps<'/treatments/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const found = await readAs(actor, (context) => listFormSites(context, { asked: address.siteId }));
  const { sites, other } = await siteFirst(found, addressWith('/treatments/new', address, {}));
  const before = treatmentFilterInput.parse({ site: found.chosen?.id });
  const { methods, last } = await readAs(actor, async (context) => ({
    methods: (await listChoices(context)).methods.filter((method) => method.kind !== 'untreated'),
    last: (await listTreatments(context, before)).runs[0],
  }));
  // Asked for by id or by kind, else as last time.
  const method =
    methods.find(({ id }) => id === address.method) ??
    methods.find(({ kind }) => kind === address.methodKind) ??
    methods.find(({ kind }) => kind === last?.method.kind) ??
    methods[0];
  if (method === undefined) return <NotThere />;
  const t = await getTranslations('treatments');
  if (sites.length === 0) return <FirstStep heading={t('new')} need="site" role={actor.role} />;
  const s = await getTranslations('sums');
  const now = new Date();
  const timeZone = sites[0]?.timeZone ?? actor.networkTimeZone;
  const fields = await treatmentFields({
    kind: 'start',
    methodKind: method.kind,
    site: { sites, other },
    days: await recentDays(todayInZone(timeZone, now)),
    person: actor,
    sums: await loadSums(actor),
  });
  return (
    <RecordForm
      key={method.id}
      action={startTreatmentAction}
      heading={t('newOf', { method: method[actor.language] })}
      fields={fields}
      values={{
        siteId: sites.length === 1 ? (sites[0]?.id ?? '') : '',
        ...nowValues('startedAt', now, timeZone),
        ...addressValues(fields, address),
        ...(found.chosen === undefined ? {} : { siteId: found.chosen.id }),
        methodId: method.id,
        id: newId(),
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
      after={<Link href={'/sums?what=lime' as Route}>{s('link')}</Link>}
    >
      <MethodChips methods={methods} chosen={method.id} language={actor.language} siteId={found.chosen?.id} />
    </RecordForm>
  );
}
