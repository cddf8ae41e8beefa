import type { TableField } from '../table-field';
import { batchFields } from './batch-fields';
import { findingFields } from './finding-fields';
import { harvestFields } from './harvest-fields';

/** Headings that stand for the day or the mass of a harvest where a table has columns of several kinds. */
const harvestFirst = new Set(['date', 'fecha', 'start date', 'in', 'bags', 'unidades', 'units', 'found']);

/** What the batch part takes as it is; a batch of a notebook is named by its code in every row. */
const ofBatch = batchFields
  .filter(({ name }) => name !== 'note')
  .map((field): TableField => {
    const needed = field.name === 'code' ? { needed: true as const } : {};
    const { needed: _, ...rest } = field;
    return {
      ...rest,
      ...needed,
      words: field.words.filter((word) => word === 'bags' || word === 'units' || !harvestFirst.has(word)),
    } as TableField;
  });

const ofHarvest = harvestFields
  .filter(({ name }) => name !== 'batch' && name !== 'site')
  .map((field): TableField => {
    const { needed: _, ...rest } = field;
    return rest as TableField;
  });

const found: readonly TableField[] = [
  {
    name: 'contaminated',
    target: 'units',
    cell: 'count',
    words: [
      'contaminated',
      'contaminated bags',
      'contaminated units',
      'lost to mould',
      'contaminadas',
      'bolsas contaminadas',
      'unidades contaminadas',
    ],
  },
  {
    name: 'foundOn',
    target: 'foundOn',
    cell: 'date',
    words: [
      'found on',
      'date found',
      'contaminated on',
      'fecha del hallazgo',
      'hallado el',
      'contaminado el',
    ],
  },
  ...findingFields
    .filter(({ name }) => name === 'sign')
    .map((field): TableField => {
      const { needed: _, ...rest } = field;
      return rest as TableField;
    }),
];

/**
 * One line per bag or per harvest, with what several tables hold: the batch as it was started, what was weighed from it
 * and what was found in it. What stands in every line about the batch is read from its first one.
 */
export const notebookFields: readonly TableField[] = [...ofBatch, ...ofHarvest, ...found];
