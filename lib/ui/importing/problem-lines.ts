import { getLocale, getTranslations } from 'next-intl/server';
import type { RecordTableLayout } from '@/lib/growing/record-table-layout';
import type { RowProblem } from '@/lib/intake/table/taker';
import { writtenValues } from '../format/written-values';
import { dynamicWords } from '../i18n/dynamic-words';
import { getReaderUnits } from '../i18n/reader-units';
import { columnName } from './column-name';

type Table = {
  readonly layout: RecordTableLayout;
  readonly offers: readonly { readonly name: string; readonly target: string }[];
};

/** What stands against rows in sentences, each naming the column as the table does. */
export async function problemSentences({ layout, offers }: Table): Promise<(problem: RowProblem) => string> {
  const words = await dynamicWords();
  const t = await getTranslations('import');
  const locale = await getLocale();
  const units = await getReaderUnits();
  const labelOf = (target: string): string => {
    const offer =
      offers.find((one) => one.target === target) ??
      offers.find((one) => one.target.startsWith(`${target}.`));
    if (offer === undefined) return target;
    const column = layout.columns.findIndex(({ field }) => field === offer.name);
    if (column < 0) return t(`fields.${offer.name as 'batch'}`);
    const name = columnName(layout.headers, column, (letter) => t('understood.unnamed', { letter }));
    return t('needs.label', { name });
  };
  return ({ field, code, values, asks }) => {
    const group = asks ? 'questions' : 'errors';
    // What only a table can be refused or asked for has its words beside the table's.
    const ofTable = `import.${group}.${code}`;
    const key = words.has(ofTable) ? ofTable : `${group}.${code}`;
    const label = field === '' ? '' : labelOf(field);
    const known = { label, ...writtenValues(values ?? {}, units, locale) };
    return words.has(key) ? words(key, known) : `${label}: ${code}`;
  };
}
