import type { TableField } from '../table-field';
import { note, siteReference } from './shared-fields';
import { treatmentReadings } from './treatment-readings';
import { treatmentTimes } from './treatment-times';

/** One load treated in one go. */
export const treatmentFields: readonly TableField[] = [
  {
    name: 'code',
    target: 'code',
    cell: 'text',
    words: [
      ...[
        'code',
        'treatment',
        'treatment run',
        'run',
        'run code',
        'treatment code',
        'treatment no',
        'load no',
      ],
      ...['codigo', 'tanda', 'tanda de tratamiento', 'tratamiento', 'codigo de tanda'],
    ],
  },
  siteReference('siteId'),
  {
    name: 'method',
    target: 'methodId',
    cell: 'reference',
    of: 'method',
    needed: true,
    words: [
      ...[
        'method',
        'treatment method',
        'how',
        'kind',
        'type',
        'treated by',
        'pasteurisation',
        'pasteurization',
      ],
      ...['metodo', 'metodo de tratamiento', 'tipo', 'pasteurizacion'],
    ],
  },
  ...treatmentTimes,
  {
    name: 'water',
    target: 'water',
    cell: 'volume',
    words: ['water', 'water volume', 'litres', 'liters', 'gallons', 'agua', 'litros', 'volumen de agua'],
  },
  {
    name: 'lime',
    target: 'lime',
    cell: 'mass',
    words: [
      'lime',
      'lime mass',
      'lime dose',
      'hydrated lime',
      'cal',
      'cal hidratada',
      'dosis de cal',
      'masa de cal',
    ],
  },
  {
    name: 'load',
    target: 'load',
    cell: 'mass',
    words: [
      ...[
        'load',
        'load mass',
        'load weight',
        'mass',
        'weight',
        'dry mass',
        'dry weight',
        'straw',
        'material mass',
      ],
      ...['carga', 'masa', 'peso', 'masa seca', 'peso seco', 'paja', 'peso de la carga'],
    ],
  },
  ...treatmentReadings,
  {
    name: 'loadCelsius',
    target: 'loadCelsiusAtSpawning',
    cell: 'temperature',
    words: [
      ...['temperature at spawning', 'spawning temperature', 'load temperature', 'temperature when spawned'],
      ...['temperatura en la siembra', 'temperatura al sembrar', 'temperatura de la carga'],
    ],
  },
  note,
];
