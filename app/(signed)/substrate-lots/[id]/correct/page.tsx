import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { getSubstrateLot } from '@/lib/records/substrate-lot/get-substrate-lot.query';
import { dateValues } from '@/lib/ui/form/date-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { massValues } from '@/lib/ui/form/mass-units';
import { lengthValues } from '@/lib/ui/form/measure-values';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { substrateLotFields } from '@/lib/ui/lots/substrate-lot-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctSubstrateLotAction } from '../../actions';

export default async function CorrectSubstrateLotPage({ params }: PageProps<'/substrate-lots/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const { lot, choices } = await readAs(actor, async (context) => ({
    lot: await getSubstrateLot(context, id),
    choices: await listChoices(context),
  }));
  if (!lot || lot.voided !== null) return <NotThere />;
  const t = await getTranslations('lots');
  return (
    <RecordForm
      action={correctSubstrateLotAction}
      heading={t('correctHeading', { code: lot.code })}
      fields={
        await substrateLotFields({
          kind: 'correct',
          materials: namedOptions(choices.materials, actor.language),
          days: await recentDays(todayInZone(actor.networkTimeZone, new Date())),
          massUnit: actor.massUnit,
        })
      }
      values={{
        id,
        revision: String(lot.revision),
        code: lot.code,
        materialId: lot.materialId,
        sourceName: lot.sourceName ?? '',
        moistureSource: lot.moistureSource,
        moisturePercent: lot.moisturePercent === null ? '' : String(lot.moisturePercent),
        note: lot.note ?? '',
        ...dateValues('receivedOn', lot.receivedOn),
        ...massValues('received', lot.receivedGrams, actor),
        ...lengthValues('cutLength', lot.cutLengthMm, actor),
      }}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
