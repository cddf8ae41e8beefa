import type { TableField } from '../table-field';
import { batchReference, note, siteReference, trimState } from './shared-fields';

/** What else than a harvest has a day. */
const otherDays = [
  ...['mould', 'mold', 'moho', 'contamin', 'found', 'hall', 'inocul', 'spawn', 'siembra', 'sembr', 'start'],
  ...['made', 'receiv', 'recib', 'treat', 'trat', 'opened', 'closed', 'checked', 'revis'],
];

/** What else than a harvest has a mass: what a unit was filled with, and what it was made of. */
const otherMasses = [
  ...['bag', 'bolsa', 'bucket', 'cubo', 'cubeta', 'balde', 'tray', 'bandeja', 'charola', 'block', 'bloque'],
  ...['sack', 'saco', 'tronco', 'unit', 'unidad', 'fill', 'llen', 'wet', 'humed', 'dry', 'seco', 'seca'],
  ...[
    'mould',
    'mold',
    'moho',
    'contamin',
    'spawn',
    'micelio',
    'semilla',
    'substrat',
    'sustrato',
    'straw',
    'paja',
    'before',
    'antes',
    'initial',
  ],
];

/** Who had it and for how much are no masses. */
const toWhom = ['to', 'a', 'who', 'whom', 'quien', 'price', 'precio', 'money', 'dinero', 'on', 'el'];

/** One harvest on the scale from one batch. */
export const harvestFields: readonly TableField[] = [
  batchReference('lines.0.batchId'),
  {
    name: 'weighedOn',
    target: 'weighedOn',
    cell: 'date',
    needed: true,
    words: [
      ...[
        'date',
        'day',
        'weighed on',
        'weighing date',
        'harvest date',
        'harvested',
        'harvested on',
        'picked',
      ],
      ...[
        'picked on',
        'pick date',
        'fecha',
        'dia',
        'fecha de cosecha',
        'fecha cosecha',
        'cosechado',
        'pesado el',
      ],
      ...['fecha de pesaje', 'fecha de corte'],
    ],
    never: otherDays,
  },
  {
    name: 'fresh',
    target: 'fresh',
    cell: 'mass',
    needed: true,
    words: [
      ...[
        'fresh',
        'fresh mass',
        'fresh weight',
        'weight',
        'mass',
        'harvest',
        'harvest weight',
        'yield',
        'kg',
        'lb',
      ],
      ...[
        'lbs',
        'fresh grams',
        'weight fresh',
        'picked weight',
        'peso',
        'peso fresco',
        'masa fresca',
        'cosecha',
      ],
      ...['peso cosechado', 'fresco', 'rendimiento', 'kilos', 'libras'],
    ],
    never: otherMasses,
  },
  {
    name: 'flush',
    target: 'lines.0.flush',
    cell: 'count',
    words: ['flush', 'flush no', 'flush number', 'break', 'wave', 'oleada', 'numero de oleada', 'brote'],
  },
  trimState('trimState'),
  {
    name: 'sold',
    target: 'sold',
    cell: 'mass',
    words: ['sold', 'sales', 'vendido', 'venta', 'vendidos'],
    never: toWhom,
  },
  {
    name: 'given',
    target: 'given',
    cell: 'mass',
    words: ['given', 'given away', 'donated', 'donation', 'donado', 'regalado', 'donacion'],
    never: toWhom,
  },
  {
    name: 'kept',
    target: 'kept',
    cell: 'mass',
    words: ['kept', 'eaten', 'own use', 'consumo', 'guardado', 'propio'],
  },
  {
    name: 'discarded',
    target: 'discarded',
    cell: 'mass',
    words: ['discarded', 'waste', 'thrown away', 'desechado', 'descarte', 'perdida'],
  },
  {
    name: 'grade',
    target: 'grade',
    cell: 'text',
    words: ['grade', 'quality', 'calidad', 'categoria', 'clase'],
  },
  note,
  siteReference('site'),
];
