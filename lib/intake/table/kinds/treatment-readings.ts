import type { TableField } from '../table-field';

/** What was read once at the beginning of a run, and once at its end. */
export const treatmentReadings: readonly TableField[] = [
  {
    name: 'celsius',
    target: 'celsius',
    cell: 'temperature',
    words: [
      ...['temperature', 'temp', 'bath temperature', 'water temperature', 'start temperature'],
      ...['temperatura', 'temperatura del bano', 'temperatura del agua', 'temperatura inicial'],
    ],
  },
  {
    name: 'ph',
    target: 'ph',
    cell: 'number',
    words: ['ph', 'ph of the bath', 'bath ph', 'start ph', 'ph del bano', 'ph del agua', 'ph inicial'],
  },
  {
    name: 'endCelsius',
    target: 'endCelsius',
    cell: 'temperature',
    words: [
      'end temperature',
      'final temperature',
      'temperature at the end',
      'temperatura final',
      'temperatura al final',
    ],
  },
  {
    name: 'endPh',
    target: 'endPh',
    cell: 'number',
    words: ['end ph', 'final ph', 'ph at the end', 'ph final', 'ph al final'],
  },
  {
    name: 'readingPlace',
    target: 'place',
    cell: 'choice',
    options: {
      load_middle: [
        'middle of the load',
        'load',
        'core',
        'substrate',
        'centro de la carga',
        'en medio de la carga',
        'carga',
        'centro',
        'sustrato',
      ],
      water: ['water around it', 'water', 'bath', 'agua de alrededor', 'en el agua', 'agua', 'bano'],
    },
    words: [
      'read at',
      'place',
      'where read',
      'reading place',
      'probe',
      'leido en',
      'lugar de lectura',
      'sonda',
    ],
  },
];
