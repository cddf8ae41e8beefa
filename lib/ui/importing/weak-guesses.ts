import { getTranslations } from 'next-intl/server';
import type { IntakeView } from '@/lib/intake/table/view-file';
import { columnName } from './column-name';

/** Columns that were guessed by a part of their heading and that nobody has looked at yet, each with what it was taken for. */
export async function weakGuesses({ layout }: Pick<IntakeView, 'layout'>): Promise<readonly string[]> {
  const t = await getTranslations('import');
  const nameOf = (index: number) =>
    columnName(layout.headers, index, (letter) => t('understood.unnamed', { letter }));
  return layout.columns.flatMap(({ field, weak }, index) =>
    weak && field !== null
      ? [
          t('file.guess', {
            column: t('understood.quoted', { cell: nameOf(index) }),
            field: t(`fields.${field as 'batch'}`),
          }),
        ]
      : [],
  );
}
