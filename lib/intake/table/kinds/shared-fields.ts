import type { TableField } from '../table-field';

export function batchReference(target: string): TableField {
  return {
    name: 'batch',
    target,
    cell: 'reference',
    of: 'batch',
    needed: true,
    words: [
      'batch',
      'batch code',
      'batch no',
      'batch number',
      'batch id',
      'lote',
      'codigo de lote',
      'codigo',
      'code',
    ],
  };
}

export function siteReference(target: string): TableField {
  return {
    name: 'site',
    target,
    cell: 'reference',
    of: 'site',
    words: ['site', 'site code', 'farm', 'garden', 'location', 'sitio', 'huerta', 'finca', 'jardin', 'lugar'],
  };
}

export function speciesReference(target: string): TableField {
  return {
    name: 'species',
    target,
    cell: 'reference',
    of: 'species',
    needed: true,
    words: ['species', 'mushroom', 'kind of mushroom', 'fungus', 'especie', 'hongo', 'seta', 'tipo de hongo'],
  };
}

export function trimState(target: string): TableField {
  return {
    name: 'trimState',
    target,
    cell: 'choice',
    options: {
      trimmed: [
        'trimmed stem bases cut off',
        'recortado sin la base del tallo',
        'trimmed',
        'cut',
        'clean',
        'yes',
        'recortado',
        'limpio',
        'si',
      ],
      as_picked: [
        'as picked stem bases left on',
        'tal como se corto con la base del tallo',
        'as picked',
        'untrimmed',
        'whole',
        'no',
        'sin recortar',
        'entero',
        'como se corto',
      ],
    },
    words: ['trimmed', 'trim', 'stem', 'recortado', 'recorte', 'trim state'],
  };
}

export const note: TableField = {
  name: 'note',
  target: 'note',
  cell: 'text',
  words: [
    'note',
    'notes',
    'remark',
    'remarks',
    'comment',
    'comments',
    'nota',
    'notas',
    'observaciones',
    'comentario',
  ],
};

const moistureSource: TableField = {
  name: 'moistureSource',
  target: 'moistureSource',
  cell: 'choice',
  options: {
    measured: ['measured', 'weighed', 'dried', 'medida', 'medido'],
    assumed: ['assumed', 'guess', 'estimated', 'supuesta', 'estimada', 'estimado'],
    none: ['no se sabe', 'none', 'unknown', 'not known', 'ninguna', 'desconocida'],
  },
  words: ['moisture source', 'moisture from', 'origen de la humedad'],
};

export const moistureFields: readonly TableField[] = [
  {
    name: 'moisturePercent',
    target: 'moisturePercent',
    cell: 'percent',
    words: [
      'moisture',
      'moisture %',
      'moisture percent',
      'water content',
      'humedad',
      'humedad %',
      '% humedad',
    ],
  },
  moistureSource,
];
