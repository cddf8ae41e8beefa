import type { TableField } from '../table-field';
import { note, trimState } from './shared-fields';

/** A place where mushrooms are grown. */
export const siteFields: readonly TableField[] = [
  {
    name: 'code',
    target: 'code',
    cell: 'text',
    needed: true,
    words: ['code', 'site code', 'short name', 'codigo', 'clave'],
  },
  {
    name: 'name',
    target: 'name',
    cell: 'text',
    needed: true,
    words: ['name', 'site', 'site name', 'garden', 'farm', 'nombre', 'sitio', 'huerta', 'finca'],
  },
  {
    name: 'kind',
    target: 'kind',
    cell: 'choice',
    options: {
      community_garden: ['community garden', 'garden', 'huerta comunitaria', 'huerto comunitario', 'jardin'],
      school_garden: ['huerto escolar', 'school garden', 'school', 'huerta escolar', 'escuela'],
      farm: ['rancho o finca', 'farm', 'finca', 'granja', 'rancho'],
      allotment: ['allotment', 'plot', 'parcela'],
      indoor_room: [
        'cuarto de cultivo',
        'indoor room',
        'room',
        'cellar',
        'indoor',
        'cuarto',
        'sala',
        'interior',
      ],
      other: ['other place', 'otro lugar', 'other', 'otro', 'otra'],
    },
    words: ['kind', 'type', 'tipo', 'clase'],
  },
  { name: 'timeZone', target: 'timeZone', cell: 'text', words: ['time zone', 'timezone', 'zona horaria'] },
  trimState('trimDefault'),
  {
    name: 'openedOn',
    target: 'openedOn',
    cell: 'date',
    words: ['opened', 'opened on', 'since', 'start', 'abierto', 'desde'],
  },
  {
    name: 'closedOn',
    target: 'closedOn',
    cell: 'date',
    words: ['closed', 'closed on', 'until', 'cerrado', 'hasta'],
  },
  note,
];
