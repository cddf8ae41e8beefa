import type { TableField } from '../table-field';
import { note, siteReference } from './shared-fields';

/** When a load went in and came out. A table has both in one cell, in a day and times beside it, or a length of time. */
const times: readonly TableField[] = [
  {
    name: 'startedAt',
    target: 'startedAt',
    cell: 'moment',
    needed: { orBy: 'day' },
    words: [
      ...[
        'started',
        'started at',
        'started on',
        'start',
        'start time',
        'begun',
        'begin',
        'from',
        'time in',
        'in at',
      ],
      ...['empezado el', 'empezado', 'inicio', 'hora de inicio', 'comienzo', 'desde', 'entrada'],
    ],
  },
  {
    name: 'day',
    target: 'day',
    cell: 'moment',
    words: [
      ...['date', 'day', 'treated on', 'treatment date', 'date of treatment'],
      ...['fecha', 'dia', 'fecha de tratamiento', 'fecha del tratamiento', 'tratado el'],
    ],
  },
  {
    name: 'endedAt',
    target: 'endedAt',
    cell: 'moment',
    words: [
      ...[
        'ended',
        'ended at',
        'ended on',
        'end',
        'end time',
        'finished',
        'until',
        'to',
        'time out',
        'out at',
      ],
      ...['terminado el', 'terminado', 'fin', 'hora de fin', 'final', 'hasta', 'salida'],
    ],
  },
  {
    name: 'minutes',
    target: 'minutes',
    cell: 'duration',
    words: [
      ...[
        'duration',
        'length',
        'how long',
        'time held',
        'held for',
        'soaked for',
        'minutes',
        'hours',
        'soak time',
      ],
      ...['duracion', 'tiempo', 'minutos', 'horas', 'tiempo de remojo', 'cuanto duro'],
    ],
  },
];

/** What was read once at the beginning of a run, and once at its end. */
const readings: readonly TableField[] = [
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
        'carga',
        'centro',
        'sustrato',
      ],
      water: ['water around it', 'water', 'bath', 'agua de alrededor', 'agua', 'bano'],
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
  ...times,
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
  ...readings,
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
