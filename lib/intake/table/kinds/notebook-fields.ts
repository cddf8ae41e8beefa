import type { TableField } from '../table-field';
import { batchFields } from './batch-fields';
import { findingFields } from './finding-fields';
import { harvestFields } from './harvest-fields';
import { numberedFields } from './numbered-harvests';

/** Under a heading such as "Mould?". */
const noMould = ['no', 'n', 'none', 'clean', 'ok', 'ninguno', 'ninguna', 'nada', 'limpia', 'limpio'];
const someMould = [
  'yes',
  'y',
  'x',
  'si',
  's',
  'mould',
  'mold',
  'mouldy',
  'moho',
  'contaminated',
  'contaminada',
];
const doneAbout = ['action', 'what was done', 'accion', 'que se hizo'];

/** Headings that stand for the day or the mass of a harvest where a table has columns of several kinds. */
const harvestFirst = new Set(['date', 'fecha', 'start date', 'in', 'bags', 'unidades', 'units', 'found']);

/** What the batch part takes as it is; a batch of a notebook is named by its code in every row. */
const ofBatch = batchFields
  .filter(({ name }) => name !== 'note')
  .map((field): TableField => {
    const needed = field.name === 'code' ? { needed: true as const } : {};
    const { needed: ofBatches, ...rest } = field;
    // A line of a batch that is there already needs none of it.
    const asked = ofBatches === undefined || field.name === 'code' ? {} : { asked: {} };
    return {
      ...rest,
      ...needed,
      ...asked,
      words: field.words.filter((word) => word === 'bags' || word === 'units' || !harvestFirst.has(word)),
    } as TableField;
  });

const ofHarvest = harvestFields
  .filter(({ name }) => name !== 'batch' && name !== 'site')
  .map((field): TableField => {
    const { needed: _, ...rest } = field;
    return (field.name === 'weighedOn' ? { ...rest, asked: { with: ['fresh'] } } : rest) as TableField;
  });

/** What a bag was filled with; the batch has what all its bags have together. */
const ofUnit: readonly TableField[] = [
  {
    name: 'unitFilledMass',
    target: 'unitFilledMass',
    cell: 'mass',
    words: [
      ...[
        'bag weight',
        'bag mass',
        'weight of bag',
        'weight per bag',
        'bag filled weight',
        'filled weight per bag',
      ],
      ...[
        'bucket weight',
        'block weight',
        'unit weight',
        'weight per unit',
        'weight per bucket',
        'weight per block',
      ],
      ...[
        'peso bolsa',
        'peso de bolsa',
        'peso de la bolsa',
        'peso por bolsa',
        'peso del cubo',
        'peso del bloque',
      ],
      ...['peso por unidad', 'peso de la unidad', 'peso por cubo', 'peso por bloque'],
    ],
    never: ['harvest', 'cosecha', 'spawn', 'micelio', 'dry', 'seco'],
  },
];

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
    asked: { with: ['contaminated', 'sign'] },
    words: [
      'found on',
      'date found',
      'contaminated on',
      'fecha del hallazgo',
      'hallado el',
      'contaminado el',
      ...['mould date', 'mold date', 'date of mould', 'mould found on', 'mouldy on', 'contamination date'],
      ...['fecha moho', 'fecha de moho', 'fecha del moho', 'fecha de contaminacion', 'fecha contaminacion'],
      ...['date contaminated', 'fecha contaminadas', 'moho el'],
    ],
  },
  ...findingFields
    .filter(({ name }) => ['sign', 'stage', 'action'].includes(name))
    .map((field): TableField => {
      const { needed: _, ...rest } = field;
      const cell = field.name === 'sign' ? { none: noMould, some: someMould } : {};
      const others = ['contaminated', 'foundOn', 'sign'].filter((name) => name !== field.name);
      return {
        ...rest,
        ...cell,
        asked: { with: others },
        ...(field.name === 'action' ? { words: doneAbout } : {}),
      } as TableField;
    }),
  {
    name: 'unitNumbers',
    target: 'unitNumbers',
    cell: 'text',
    words: [
      ...[
        'bag no',
        'bag number',
        'bag #',
        'bag id',
        'bag',
        'unit no',
        'unit number',
        'bucket no',
        'block no',
      ],
      ...['no de bolsa', 'numero de bolsa', 'bolsa no', 'bolsa', 'no de unidad', 'numero de unidad'],
      ...['cubo no', 'no de cubo', 'bloque no', 'no de bloque'],
    ],
  },
];

/**
 * One line per bag or per harvest, with what several tables hold: the batch as it was started, what was weighed from it
 * and what was found in it. What stands in every line about the batch is read from its first one.
 */
export const notebookFields: readonly TableField[] = [
  ...ofBatch,
  ...ofUnit,
  ...ofHarvest,
  ...numberedFields,
  ...found,
];
