import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import type { FormSite } from '@/lib/records/site/list-form-sites.query';
import type { ChoiceOption, FieldSpec, FormState } from '../form/field-spec';
import { loadFormWords } from '../form/load-form-words';
import { recentDays } from '../form/recent-days';
import { RecordForm } from '../form/record-form';
import { EmptyState } from '../page/empty-state';
import { Heading } from '../page/heading';

type Props = {
  readonly list: 'trainings' | 'participants' | 'sales' | 'practices';
  readonly action: (state: FormState, data: FormData) => Promise<FormState>;
  readonly sites: readonly FormSite[];
  /** The fields, given the latest days to choose from. */
  readonly fields: (days: readonly ChoiceOption[]) => Promise<readonly FieldSpec[]>;
  /** The day that is most likely today. */
  readonly day: string;
  readonly values?: FormState['values'];
};

/** The form of a new record of the programme; a person without a site is told that there is nowhere to record it. */
export async function AddRecordForm({ list, action, sites, fields, day, values }: Props) {
  const t = await getTranslations('programme');
  const heading = t(`${list}.new`);
  const [first] = sites;
  if (!first)
    return (
      <>
        <Heading text={heading} />
        <EmptyState text={t('noSites')} />
      </>
    );
  const today = todayInZone(first.timeZone, new Date());
  return (
    <RecordForm
      action={action}
      heading={heading}
      fields={await fields(await recentDays(today))}
      values={{
        id: newId(),
        siteId: sites.length === 1 ? first.id : '',
        [`${day}__quick`]: today,
        ...values,
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
