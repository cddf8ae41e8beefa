import type { ColumnHead } from '@/lib/export/saved/saved-table';
import type { WrittenWords } from '@/lib/export/saved/written-words';
import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { DynamicWords } from '../i18n/dynamic-words';

/** Units as people write them, where the UCUM code is another. */
const shown: Readonly<Record<string, string>> = { celsius: '°C', ph: '' };

function unitAfter({ unit }: ColumnHead): string {
  if (unit === undefined || unit === 'one') return '';
  const text = shown[unit] ?? ucumCodes[unit];
  return text === '' ? '' : ` (${text})`;
}

/** The words in which a saved table is written, for a reader's language. */
export function writtenWords(words: DynamicWords): WrittenWords {
  const t = (key: string) => words(`export.${key}`);
  return {
    heading: (column) => `${t(`columns.${column.key}.name`)}${unitAfter(column)}`,
    about: ({ key }) => t(`columns.${key}.about`),
    blank: ({ blank }) => t(`blank.${blank}`),
    choice: (group, value) => words(`vocabulary.${group}.${value}`),
    yesNo: (value) => t(value ? 'yes' : 'no'),
    sheets: { rows: t('sheets.rows'), columns: t('sheets.columns') },
    columnsTable: {
      column: t('columnsTable.column'),
      about: t('columnsTable.about'),
      unit: t('columnsTable.unit'),
      blank: t('columnsTable.blank'),
    },
  };
}
