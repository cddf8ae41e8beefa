import { getTranslations } from 'next-intl/server';
import { trainingTopics } from '@/lib/growing/programme-vocabulary';
import { mostQuestions } from '@/lib/records/training/training.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';
import { siteSelect } from '../sites/site-select';
import type { FormKind } from './form-kind';

type Options = {
  readonly form: FormKind;
  readonly days: readonly ChoiceOption[];
  readonly people: readonly { readonly id: string; readonly name: string; readonly siteName: string }[];
  /** How many questions stand filled in; two more are offered. */
  readonly questions: number;
};

/** The form of a training: when, about what and how many at once; names and answers folded until wanted. */
export async function trainingFields({ form, days, people, questions }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('programme.trainings');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const rows = Math.min(mostQuestions, questions + 2);
  const own: FieldSpec[] =
    form.kind === 'add'
      ? [{ kind: 'hidden', name: 'id' }, siteSelect(form.site, label('fields.siteId'))]
      : [];
  return [
    ...own,
    { kind: 'date', name: 'heldOn', label: label('fields.heldOn'), quick: days },
    { kind: 'text', name: 'title', label: label('fields.title'), hint: t('hints.title') },
    {
      kind: 'select',
      name: 'topic',
      label: label('fields.topic'),
      options: trainingTopics.map((value) => ({ value, label: words(`trainingTopic.${value}`) })),
    },
    {
      kind: 'whole',
      name: 'headCount',
      label: label('fields.headCount'),
      hint: t('hints.headCount'),
      optional: true,
    },
    {
      kind: 'group',
      name: 'who',
      legend: t('groups.who'),
      hint: t('hints.who'),
      folded: true,
      fields: [
        ...(people.length === 0
          ? []
          : [
              {
                kind: 'several' as const,
                name: 'participants',
                label: label('fields.participants'),
                optional: true,
                options: people.map(({ id, name, siteName }) => ({ value: id, label: name, hint: siteName })),
              },
            ]),
        {
          kind: 'paragraph',
          name: 'newNames',
          label: label('fields.newNames'),
          hint: t('hints.newNames'),
          optional: true,
        },
        {
          kind: 'radio',
          name: 'newCounted',
          label: label('fields.newCounted'),
          optional: true,
          options: (['yes', 'no'] as const).map((value) => ({ value, label: t(`newCounted.${value}`) })),
        },
      ],
    },
    ...Array.from({ length: rows }, (_, row) => questionGroup(row)),
    {
      kind: 'group',
      name: 'details',
      legend: t('groups.details'),
      folded: true,
      fields: [
        { kind: 'text', name: 'place', label: label('fields.place'), optional: true },
        {
          kind: 'whole',
          name: 'minutes',
          label: label('fields.minutes'),
          suffix: 'min',
          optional: true,
        },
        { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
      ],
    },
    ...(form.kind === 'correct' ? await correctionFields() : []),
  ];

  function questionGroup(row: number): FieldSpec {
    const name = (field: string) => `questions.${row}.${field}`;
    return {
      kind: 'group',
      name: `question-${row}`,
      legend: t('groups.question', { number: row + 1 }),
      ...(row === 0 ? { hint: t('hints.question') } : {}),
      folded: true,
      fields: [
        { kind: 'text', name: name('wording'), label: label('fields.questions.wording'), optional: true },
        {
          kind: 'whole',
          name: name('scaleMost'),
          label: label('fields.questions.scaleMost'),
          hint: t('hints.scaleMost'),
          optional: true,
        },
        {
          kind: 'text',
          name: name('leastLabel'),
          label: label('fields.questions.leastLabel'),
          optional: true,
        },
        { kind: 'text', name: name('mostLabel'), label: label('fields.questions.mostLabel'), optional: true },
        {
          kind: 'text',
          name: name('before'),
          label: label('fields.questions.before'),
          hint: t('hints.answers'),
          optional: true,
        },
        { kind: 'text', name: name('after'), label: label('fields.questions.after'), optional: true },
      ],
    };
  }
}
