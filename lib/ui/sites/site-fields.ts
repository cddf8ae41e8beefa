import { getTranslations } from 'next-intl/server';
import { trimStates } from '@/lib/growing/vocabulary';
import { siteKinds } from '@/lib/records/site/site.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { timeZoneOptions } from '../format/time-zone-options';

/** The fields of a site; a correction also asks why. */
export async function siteFields(kind: 'add' | 'correct'): Promise<FieldSpec[]> {
  const t = await getTranslations('sites');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const fields: FieldSpec[] = [
    { kind: 'text', name: 'name', label: label('fields.name') },
    { kind: 'text', name: 'code', label: label('fields.code'), hint: t('hints.code'), width: 'short' },
    {
      kind: 'select',
      name: 'kind',
      label: label('fields.kind'),
      options: siteKinds.map((value) => ({ value, label: words(`siteKind.${value}`) })),
    },
    { kind: 'select', name: 'timeZone', label: label('fields.timeZone'), options: timeZoneOptions() },
    {
      kind: 'radio',
      name: 'trimDefault',
      label: label('fields.trimDefault'),
      options: trimStates.map((value) => ({ value, label: words(`trimState.${value}`) })),
    },
    { kind: 'date', name: 'openedOn', label: label('fields.openedOn'), optional: true, quick: [] },
    { kind: 'date', name: 'closedOn', label: label('fields.closedOn'), optional: true, quick: [] },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
  ];
  const correction: FieldSpec[] = [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    { kind: 'text', name: 'reason', label: label('fields.reason') },
  ];
  return kind === 'correct' ? [...fields, ...correction] : fields;
}
