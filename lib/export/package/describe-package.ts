import { ucumCodes } from '@/lib/growing/ucum-codes';
import { columnText } from './column-texts';
import { type PackageTable, packageTables } from './package-tables';
import type { StoredColumn, StoredTable } from './read-columns';

export const licenceNames = ['none', 'CC-BY-4.0', 'CC0-1.0', 'ODbL-1.0'] as const;

/** Under what others may use the data, by its SPDX name. */
export type Licence = (typeof licenceNames)[number];

const licences = {
  'CC0-1.0': {
    name: 'CC0-1.0',
    title: 'CC0 1.0 Universal',
    path: 'https://creativecommons.org/publicdomain/zero/1.0/',
  },
  'CC-BY-4.0': {
    name: 'CC-BY-4.0',
    title: 'Creative Commons Attribution 4.0 International',
    path: 'https://creativecommons.org/licenses/by/4.0/',
  },
  'ODbL-1.0': {
    name: 'ODbL-1.0',
    title: 'Open Data Commons Open Database License 1.0',
    path: 'https://opendatacommons.org/licenses/odbl/1-0/',
  },
  none: {
    name: 'LicenseRef-none',
    title: 'No licence given: ask the network before using or passing on the data',
  },
} as const;

/** A file of the archive once it is written. */
export type WrittenTable = {
  readonly table: StoredTable;
  readonly rows: number;
  readonly bytes: number;
  readonly sha256: string;
};

const profile = 'https://datapackage.org/profiles/2.0/';

/** Where the identifiers of a column mean something outside Pinset. */
const meaning: Readonly<Record<string, string>> = { taxon_id: 'http://purl.obolibrary.org/obo/ncbitaxon' };

function field(table: string, { column, type, required, categories }: StoredColumn) {
  const text = columnText(table, column);
  const blank = required ? undefined : (text?.blank ?? 'not recorded');
  return {
    name: column,
    type,
    ...(type === 'string' && /(^|_)id$/.test(column) ? { format: 'uuid' } : {}),
    description: `${text?.about ?? column}.${blank === undefined ? ' Never blank.' : ` Blank: ${blank}.`}`,
    ...(text?.unit === undefined ? {} : { unit: ucumCodes[text.unit] }),
    ...(meaning[column] === undefined ? {} : { rdfType: meaning[column] }),
    ...(categories === null
      ? {}
      : { categories: categories.map((value) => ({ value, label: value.replaceAll('_', ' ') })) }),
    ...(blank === undefined ? {} : { missingValues: [{ value: '', label: blank }] }),
    constraints: { ...(required ? { required: true } : {}), ...(column === 'id' ? { unique: true } : {}) },
  };
}

function resource({ table, rows, bytes, sha256 }: WrittenTable) {
  const foreignKeys = table.keys
    .filter((key) => key.table in packageTables)
    .map((key) => ({
      fields: key.fields,
      reference: {
        ...(key.table === table.name ? {} : { resource: key.table.replaceAll('_', '-') }),
        fields: key.references,
      },
    }));
  return {
    name: table.name.replaceAll('_', '-'),
    type: 'table',
    path: `data/${table.name}.csv`,
    description: packageTables[table.name as PackageTable],
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes,
    hash: `sha256:${sha256}`,
    rows,
    dialect: { $schema: `${profile}tabledialect.json`, delimiter: ',', lineTerminator: '\r\n', header: true },
    schema: {
      $schema: `${profile}tableschema.json`,
      fields: table.columns.map((column) => field(table.name, column)),
      primaryKey: ['id'],
      ...(foreignKeys.length === 0 ? {} : { foreignKeys }),
      missingValues: [{ value: '', label: 'blank; each column says what that means' }],
    },
  };
}

export type PackageFacts = {
  /** The network's own columns, as text. */
  readonly network: Readonly<Record<string, string | null>>;
  readonly id: string;
  readonly createdAt: Date;
  readonly licence: Licence;
  readonly softwareVersion: string;
};

/** The descriptor of an archive (Data Package 2.0) with `unit` (UCUM), `rows` and `network` besides. */
export function describePackage(facts: PackageFacts, written: readonly WrittenTable[]) {
  const { network, id, createdAt, licence, softwareVersion } = facts;
  const created = createdAt.toISOString();
  const title = network.name ?? '';
  return {
    $schema: `${profile}datapackage.json`,
    name: `pinset-${(network.code ?? 'network').toLowerCase().replaceAll(/[^a-z0-9._-]/g, '-')}`,
    id: `urn:uuid:${id}`,
    title: `All records of ${title}`,
    description:
      'Batches of mushrooms on low-tech substrates: substrate, treatment, spawn, contamination and harvest of each. ' +
      'Voided rows are in it and marked; leave them out of every figure. Names, addresses and ids of people, ' +
      'pictures and the history of corrections are not in it. In text that would begin like a formula one ' +
      'apostrophe stands before it: take it away when reading. Masses are whole grams, dates calendar dates of ' +
      'the site, instants UTC. `unit` is a UCUM code.',
    version: created.slice(0, 10).replaceAll('-', '.'),
    created,
    licenses: [licences[licence]],
    contributors: [{ title, roles: ['dataCollector', 'rightsHolder'] }],
    sources: [{ title: `${title}: records kept in Pinset ${softwareVersion}, saved ${created}` }],
    network,
    resources: written.map(resource),
  };
}
