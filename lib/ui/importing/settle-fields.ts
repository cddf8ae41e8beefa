import { getTranslations } from 'next-intl/server';
import type { OpenPoints } from '@/lib/intake/table/open-points';
import type { IntakeView } from '@/lib/intake/table/view-file';
import type { FieldSpec, FormState } from '../form/field-spec';
import { choiceOptions } from './choice-options';
import { problemSentences } from './problem-lines';

/** Texts to be matched and questions to be answered for many rows at once, as fields of one form. */
export async function settleFields(
  file: IntakeView,
  points: OpenPoints,
): Promise<{ fields: FieldSpec[]; values: FormState['values'] }> {
  const t = await getTranslations('import');
  const sentence = await problemSentences(file);
  const optionsOf = await choiceOptions();
  const texts = points.unknown.flatMap(({ key, field, text, rows }, index): FieldSpec[] => [
    { kind: 'hidden', name: `texts.${index}` },
    {
      kind: 'select',
      name: `choices.${index}`,
      label: t('settle.text', { text, field: t(`fields.${field as 'batch'}`), rows }),
      emptyLabel: t('settle.leave'),
      options: optionsOf(field, points.choices.get(key)),
    },
  ]);
  const from = points.unknown.length;
  const chosen = points.chosen.flatMap(({ key, field, text }, index): FieldSpec[] => [
    { kind: 'hidden', name: `texts.${from + index}` },
    {
      kind: 'select',
      name: `choices.${from + index}`,
      label: t('settle.chosen', { text, field: t(`fields.${field as 'batch'}`) }),
      emptyLabel: t('settle.askAgain'),
      options: optionsOf(field, points.choices.get(key)),
    },
  ]);
  const asked: FieldSpec[] =
    points.questions.length === 0
      ? []
      : [
          {
            kind: 'several',
            name: 'questions',
            label: t('asked.heading'),
            hint: t('asked.intro'),
            options: points.questions.map(({ rows, line, question }) => ({
              value: question.code,
              label: t('asked.one', {
                ...{ rows, line },
                question: sentence({ ...question, asks: true }),
              }),
            })),
          },
        ];
  const more = points.unknownMore;
  return {
    fields: [
      ...(texts.length === 0
        ? []
        : [
            {
              kind: 'group' as const,
              name: 'textsGroup',
              legend: t('settle.heading'),
              hint: t('settle.intro'),
              fields: [
                ...texts,
                ...(more === 0
                  ? []
                  : [
                      {
                        kind: 'prose' as const,
                        name: 'more',
                        text: t('settle.more', { count: more }),
                      },
                    ]),
              ],
            },
          ]),
      ...asked,
      ...(chosen.length === 0
        ? []
        : [
            {
              kind: 'group' as const,
              name: 'chosenGroup',
              legend: t('settle.chosenHeading', { count: points.chosen.length }),
              folded: true,
              fields: chosen,
            },
          ]),
    ],
    values: Object.fromEntries([
      ...points.unknown.map(({ key }, index) => [`texts.${index}`, key] as const),
      ...points.chosen.flatMap(({ key, value }, index) => [
        [`texts.${from + index}`, key] as const,
        [`choices.${from + index}`, value] as const,
      ]),
    ]),
  };
}
