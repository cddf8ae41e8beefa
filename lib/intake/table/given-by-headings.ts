import type { TableColumn } from '@/lib/growing/record-table-layout';
import { plainWords } from './plain-words';
import type { TableField } from './table-field';

/** Columns whose heading calls the units by what they are: "N.º de bolsas", "Buckets", "Bag weight kg". */
const namingUnits = new Set(['unitCount', 'unitNumbers', 'unitFilledMass', 'contaminated', 'bedArea']);

/** What the headings themselves say of the whole table: in which kind of container it grows, where they name one kind. */
export function givenByHeadings(
  headers: readonly string[],
  columns: readonly TableColumn[],
  fields: readonly TableField[],
): Readonly<Record<string, string>> {
  const container = fields.find(({ name }) => name === 'containerKind');
  const held = columns.some(({ field }) => field === 'containerKind');
  if (held || container?.cell !== 'choice') return {};
  const words = headers.flatMap((header, index) =>
    namingUnits.has(columns[index]?.field ?? '') ? plainWords(header).split(' ') : [],
  );
  const kinds = Object.entries(container.options).flatMap(([kind, names]) =>
    words.some((word) => names.includes(word)) ? [kind] : [],
  );
  const [only, ...others] = kinds;
  return only !== undefined && others.length === 0 ? { containerKind: only } : {};
}
