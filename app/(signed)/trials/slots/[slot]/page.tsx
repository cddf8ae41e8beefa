import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getSlot } from '@/lib/records/trial/get-slot.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { formatDate } from '@/lib/ui/format/date-text';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { assignSlotAction } from '../../actions';

export default async function SlotPage({ params }: PageProps<'/trials/slots/[slot]'>) {
  const { slot: id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const slot = isId(id) ? await readAs(actor, (context) => getSlot(context, id)) : undefined;
  if (!slot) return <NotThere />;
  const t = await getTranslations('trials');
  const locale = await getLocale();
  const heading = sentenceCase(t('slot.heading', { arm: slot.arm, place: slot.place, site: slot.siteName }));
  const toTrial = <Link href={`/trials/${slot.trialId}` as Route}>{slot.title}</Link>;
  if (slot.ended)
    return (
      <>
        <Heading text={heading} />
        <p>{t('slot.ended')}</p>
        <p>{toTrial}</p>
      </>
    );
  return (
    <RecordForm
      action={assignSlotAction}
      heading={heading}
      fields={[
        {
          kind: 'select',
          name: 'batchId',
          label: sentenceCase(t('fields.batchId')),
          optional: true,
          emptyLabel: t('slot.none'),
          options: slot.batches.map(({ id: value, code, inoculatedOn, units }) => ({
            value,
            label: t('slot.batchOption', { code, date: formatDate(inoculatedOn, locale), count: units }),
          })),
        },
        {
          kind: 'text',
          name: 'departure',
          label: sentenceCase(t('fields.departure')),
          hint: t('slot.departureHint'),
          width: 'long',
          optional: true,
        },
        {
          kind: 'text',
          name: 'reason',
          label: t('slot.fieldReason'),
          hint: t('slot.reasonHint'),
          optional: true,
        },
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'revision' },
      ]}
      values={{
        id: slot.id,
        revision: String(slot.revision),
        batchId: slot.batchId ?? '',
        departure: slot.departure ?? '',
      }}
      submitLabel={t('slot.submit')}
      words={await loadFormWords()}
      after={toTrial}
    >
      <p className="lead">{slot.title}</p>
    </RecordForm>
  );
}
