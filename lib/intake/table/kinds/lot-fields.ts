import type { TableField } from '../table-field';
import { moistureFields, note, speciesReference } from './shared-fields';

const code = (words: readonly string[]): TableField => ({
  name: 'code',
  target: 'code',
  cell: 'text',
  words: ['code', 'lot', 'lot code', 'lot no', 'lot number', 'lote', 'codigo', ...words],
});

const received: TableField = {
  name: 'received',
  target: 'received',
  cell: 'mass',
  words: [
    'received',
    'mass',
    'weight',
    'amount',
    'quantity',
    'received mass',
    'recibido',
    'peso',
    'masa',
    'cantidad',
  ],
};

function receivedOn(needed: boolean): TableField {
  return {
    name: 'receivedOn',
    target: 'receivedOn',
    cell: 'date',
    ...(needed ? { needed: true as const } : {}),
    words: [
      'received on',
      'date',
      'date received',
      'delivered',
      'delivery date',
      'fecha',
      'recibido el',
      'entrega',
    ],
  };
}

/** One delivery of one material from one source. */
export const substrateLotFields: readonly TableField[] = [
  code(['substrate lot', 'material lot', 'lote de sustrato', 'lote de material']),
  {
    name: 'material',
    target: 'materialId',
    cell: 'reference',
    of: 'material',
    needed: true,
    words: ['material', 'substrate', 'kind', 'sustrato', 'tipo'],
  },
  receivedOn(true),
  {
    name: 'sourceName',
    target: 'sourceName',
    cell: 'text',
    words: ['source', 'from', 'supplier', 'farm', 'origen', 'proveedor', 'procedencia', 'de'],
  },
  received,
  ...moistureFields,
  {
    name: 'cutLength',
    target: 'cutLength',
    cell: 'length',
    words: ['cut length', 'chop length', 'length', 'largo de corte', 'corte'],
  },
  note,
];

/** What one maker made in one go of one strain. */
export const spawnLotFields: readonly TableField[] = [
  code(['spawn lot', 'spawn', 'lote de micelio', 'micelio', 'lote de semilla', 'semilla']),
  speciesReference('speciesId'),
  { name: 'strain', target: 'strain', cell: 'text', words: ['strain', 'variety', 'cepa', 'variedad'] },
  {
    name: 'form',
    target: 'form',
    cell: 'choice',
    needed: true,
    options: {
      grain: [
        'grain spawn',
        'semilla en grano',
        'grain',
        'rye',
        'millet',
        'wheat',
        'sorghum',
        'grano',
        'trigo',
        'sorgo',
        'mijo',
      ],
      sawdust: ['sawdust spawn', 'semilla en aserrin', 'sawdust', 'aserrin', 'serrin'],
      plug: [
        'plug spawn',
        'semilla en tarugos',
        'plug',
        'plugs',
        'dowel',
        'dowels',
        'tarugo',
        'tarugos',
        'taco',
      ],
      other: ['other spawn', 'otra semilla', 'other', 'otro', 'otra'],
    },
    words: ['form', 'carrier', 'kind', 'type', 'forma', 'tipo', 'soporte'],
  },
  {
    name: 'maker',
    target: 'maker',
    cell: 'text',
    words: ['maker', 'supplier', 'made by', 'fabricante', 'proveedor', 'hecho por'],
  },
  {
    name: 'makerCode',
    target: 'makerCode',
    cell: 'text',
    words: ['maker code', 'supplier code', 'codigo del fabricante'],
  },
  {
    name: 'madeOn',
    target: 'madeOn',
    cell: 'date',
    words: ['made on', 'made', 'date made', 'hecho el', 'fecha de elaboracion'],
  },
  receivedOn(false),
  received,
  {
    name: 'cultureName',
    target: 'cultureName',
    cell: 'text',
    words: ['culture', 'mother culture', 'cultivo', 'cultivo madre'],
  },
  note,
];
