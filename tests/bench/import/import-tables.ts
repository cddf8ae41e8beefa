import type { RecordTableKind } from '@/lib/growing/record-table-layout';

/** A table to bring in: its name, its kind and its rows, the line of names first. */
export type BenchTable = {
  readonly kind: RecordTableKind;
  readonly rows: readonly (readonly string[])[];
  /** What a person would have answered with yes. */
  readonly confirmed: readonly string[];
};

const siteCount = 100;
const lotsInUse = 200;
const firstDay = Date.UTC(2025, 6, 1);

/** The day on which the bench is set: every date of its tables lies within the year before. */
export const benchDay = new Date('2026-07-20T15:00:00Z');

const day = (number: number) => new Date(firstDay + number * 86_400_000).toISOString().slice(0, 10);
const code = (prefix: string, number: number) => `${prefix}-${String(number).padStart(6, '0')}`;
const each = (count: number, row: (number: number) => readonly string[]) =>
  Array.from({ length: count }, (_, number) => row(number));

const batchDay = (number: number) => 20 + ((number * 7) % 240);

function sites(): BenchTable {
  const rows = each(siteCount, (number) => [code('SITE', number), `Garden ${number}`, 'farm']);
  return { kind: 'sites', rows: [['Code', 'Name', 'Type'], ...rows], confirmed: [] };
}

function substrateLots(count: number): BenchTable {
  const rows = each(count, (number) => [
    code('M', number),
    'Wheat straw',
    day(number % 20),
    '1800',
    'North field',
  ]);
  return {
    kind: 'substrate_lots',
    rows: [['Lot', 'Material', 'Received on', 'Weight (kg)', 'Supplier'], ...rows],
    confirmed: [],
  };
}

function spawnLots(count: number): BenchTable {
  const rows = each(count, (number) => [
    code('S', number),
    'Pleurotus ostreatus',
    'grain',
    day(number % 20),
    'Old barn',
  ]);
  return {
    kind: 'spawn_lots',
    rows: [['Spawn lot', 'Species', 'Carrier', 'Made on', 'Maker'], ...rows],
    confirmed: [],
  };
}

function batches(count: number): BenchTable {
  const names = [
    'Batch',
    'Site',
    'Species',
    'Container',
    'Bags',
    'Inoculation date',
    'Substrate lot',
    'Treatment',
  ];
  const rows = each(count, (number) => [
    ...[code('B', number), code('SITE', number % siteCount), 'Pleurotus ostreatus', 'bag', '10'],
    ...[day(batchDay(number)), code('M', number % lotsInUse), number % 3 === 0 ? 'steam' : 'cold lime soak'],
    ...['40', '70', code('S', number % lotsInUse), '1.2'],
  ]);
  return {
    kind: 'batches',
    rows: [[...names, 'Wet weight (kg)', 'Moisture %', 'Spawn lot', 'Spawn (kg)'], ...rows],
    confirmed: [],
  };
}

/** Four harvests of each batch and more, a week apart. */
function harvests(count: number): BenchTable {
  const of = Math.max(1, Math.floor(count / 4));
  const rows = each(count, (number) => [
    ...[code('B', number % of), day(batchDay(number % of) + 25 + 7 * Math.floor(number / of))],
    ...[(0.7 + (number % 50) / 100).toFixed(2), String(1 + Math.floor(number / of)), '0.5', 'first pick'],
  ]);
  return {
    kind: 'harvests',
    rows: [['Batch', 'Date', 'Fresh (kg)', 'Flush', 'Sold (kg)', 'Notes'], ...rows],
    confirmed: [],
  };
}

/** Two findings of each batch, of one bag each. */
function findings(count: number): BenchTable {
  const of = Math.max(1, Math.floor(count / 2));
  const rows = each(count, (number) => [
    ...[code('B', number % of), day(batchDay(number % of) + 10 + 5 * Math.floor(number / of)), '1', 'green'],
    ...['thrown out', 'by the door'],
  ]);
  return {
    kind: 'findings',
    rows: [['Batch', 'Date found', 'Bags', 'Mould', 'Action', 'Notes'], ...rows],
    confirmed: [],
  };
}

/** One line per harvest, four of each batch, which the first of them starts; some tell of a bag thrown out as well. */
function notebook(count: number): BenchTable {
  const names = ['Batch', 'Site', 'Species', 'Container', 'Bags', 'Inoculation date', 'Substrate lot'];
  const rows = each(count, (number) => {
    const batch = Math.floor(number / 4);
    const flush = number % 4;
    const on = batchDay(batch) + 25 + 7 * flush;
    return [
      ...[code('NB', batch), code('SITE', batch % siteCount), 'Pleurotus ostreatus', 'bag', '10'],
      ...[day(batchDay(batch)), code('M', batch % lotsInUse), batch % 3 === 0 ? 'steam' : 'cold lime soak'],
      ...['40', '70', code('S', batch % lotsInUse), '1.2', day(on)],
      ...[(0.7 + (number % 50) / 100).toFixed(2), String(1 + flush), flush === 1 ? '1' : '', 'green'],
    ];
  });
  const parts = ['Treatment', 'Wet weight (kg)', 'Moisture %', 'Spawn lot', 'Spawn (kg)'];
  const harvest = ['Harvest date', 'Fresh (kg)', 'Flush', 'Contaminated', 'Mould'];
  const told = rows.map((row) => (row[15] === '' ? [...row.slice(0, 16), ''] : row));
  return { kind: 'notebook', rows: [[...names, ...parts, ...harvest], ...told], confirmed: [] };
}

/** Loads with what was read at their beginning and end. */
function treatments(count: number): BenchTable {
  const rows = each(count, (number) => [
    ...[code('T', number), code('SITE', number % siteCount), 'cold lime soak', day(number % 300), '18:00'],
    ...['10:00', '200', '800', '15', '12.4', '12.1'],
  ]);
  const names = ['Run', 'Site', 'Method', 'Date', 'In at', 'Out at', 'Water (l)', 'Lime (g)', 'Temp (°C)'];
  return { kind: 'treatments', rows: [[...names, 'pH', 'Final pH'], ...rows], confirmed: [] };
}

const lots: readonly RecordTableKind[] = ['sites', 'substrate_lots', 'spawn_lots'];

/** What must be there before a table of a kind. */
const needs: Readonly<Partial<Record<RecordTableKind, readonly RecordTableKind[]>>> = {
  treatments: ['sites'],
  batches: lots,
  harvests: [...lots, 'batches'],
  findings: [...lots, 'batches'],
  notebook: lots,
};

/**
 * The tables of the bench in the order in which they need one another, so many rows each (of sites a hundred); with
 * `only` that one and what it needs, as far as it needs it.
 */
export function benchTables(count: number, only: RecordTableKind | undefined): readonly BenchTable[] {
  const asFarAs = (kind: RecordTableKind, needed: number) =>
    Math.max(lotsInUse, only === undefined || only === kind ? count : needed);
  const all = [
    sites(),
    substrateLots(asFarAs('substrate_lots', lotsInUse)),
    spawnLots(asFarAs('spawn_lots', lotsInUse)),
    treatments(count),
    batches(asFarAs('batches', Math.ceil(count / (only === 'harvests' ? 4 : 2)))),
    harvests(count),
    findings(count),
    notebook(count),
  ];
  return only === undefined ? all : all.filter(({ kind }) => kind === only || needs[only]?.includes(kind));
}
