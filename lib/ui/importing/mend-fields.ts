import { getTranslations } from 'next-intl/server';
import type { IntakeView, NeedyRow } from '@/lib/intake/table/view-file';
import type { FieldSpec, FormState } from '../form/field-spec';
import { columnName } from './column-name';
import { givenFields, givenValues } from './given-fields';
import { problemSentences } from './problem-lines';

/** The cells of one row that hold something, as text to be written over, and its questions as ticks. */
export async function mendFields(
  file: IntakeView,
  row: NeedyRow,
): Promise<{ fields: FieldSpec[]; values: FormState['values']; wrong: readonly string[] }> {
  const t = await getTranslations('import');
  const sentence = await problemSentences(file);
  const held = file.layout.columns.flatMap(({ field }, index) => (field === null ? [] : [{ field, index }]));
  const cells = held.map(
    ({ index }): FieldSpec => ({
      kind: 'text',
      name: `cells.${index}`,
      label: columnName(file.layout.headers, index, (letter) => t('understood.unnamed', { letter })),
    }),
  );
  const asked = row.problems.filter(({ asks }) => asks);
  const fields: FieldSpec[] = [
    ...cells,
    ...(await givenFields(file.asked, 'said', t('given.asTable'))),
    ...(asked.length === 0
      ? []
      : [
          {
            kind: 'several' as const,
            name: 'questions',
            label: t('asked.heading'),
            options: asked.map((problem) => ({
              value: problem.code,
              label: t('needs.asks', { question: sentence(problem) }),
            })),
          },
        ]),
  ];
  const values = {
    ...Object.fromEntries(held.map(({ index }) => [`cells.${index}`, row.cells[index] ?? ''])),
    ...givenValues(file.asked, 'said', row.said),
  };
  return { fields, values, wrong: row.problems.filter(({ asks }) => !asks).map(sentence) };
}
