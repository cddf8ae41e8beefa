import type { TableField } from '../table-field';

/** When a load went in and came out. A table has both in one cell, in a day and times beside it, or a length of time. */
export const treatmentTimes: readonly TableField[] = [
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
