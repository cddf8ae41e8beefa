import { describe, expect, it } from 'vitest';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import { guessRecordLayout } from '@/lib/intake/table/guess-layout';
import { fieldsOfKind } from '@/lib/intake/table/kinds/fields-of-kind';
import { readTable } from '@/lib/intake/table/read-table';

const usual = { dateOrder: 'dmy', decimal: 'comma', units: ['kg', 'L', 'celsius'] } as const;

async function understood(kind: RecordTableKind, ...headings: string[]) {
  const read = await readTable(
    Buffer.from(`${headings.join(';')}\n${headings.map(() => '1').join(';')}\n`),
    {},
  );
  if (typeof read === 'string') throw new Error(read);
  return guessRecordLayout(read.rows, fieldsOfKind[kind], read.written, usual, 1);
}

const fieldsUnder = async (...headings: string[]) =>
  (await understood('notebook', ...headings)).columns.map(({ field }) => field);

describe('the headings of a notebook of bags', () => {
  it.each([
    ['Bag weight kg', 'unitFilledMass'],
    ['Weight per bag (kg)', 'unitFilledMass'],
    ['Peso por bolsa (kg)', 'unitFilledMass'],
    ['Mould date', 'foundOn'],
    ['Fecha de moho', 'foundOn'],
    ['Fecha de contaminación', 'foundOn'],
    ['Mould?', 'sign'],
    ['Bag no.', 'unitNumbers'],
    ['N.º de bolsa', 'unitNumbers'],
    ['N.º de bolsas', 'unitCount'],
    ['1st flush g', 'fresh1'],
    ['Second flush (g)', 'fresh2'],
    ['Cosecha 2 (kg)', 'fresh2'],
    ['Fecha cosecha 2', 'weighedOn2'],
    ['Dry weight (lb)', 'massBefore'],
  ])('%s is %s', async (heading, field) => {
    expect(await fieldsUnder('Batch', heading)).toEqual(['code', field]);
  });

  it.each([
    'Bag filled (kg)',
    'Peso seco de la cosecha',
    'Mould weight',
    'Straw weight',
    'Peso del sustrato',
  ])('the mass under "%s" is no harvest', async (heading) => {
    expect(await fieldsUnder('Batch', heading)).not.toContain('fresh');
  });

  it.each(['Mold seen date', 'Date of contamination', 'Moho fecha', 'Date spawn arrived'])(
    'the day under "%s" is no day of a harvest',
    async (heading) => {
      expect(await fieldsUnder('Batch', heading)).not.toContain('weighedOn');
    },
  );

  it('a number of a flush has no mass, and who bought it is no mass either', async () => {
    expect(await fieldsUnder('Batch', 'Flush g', 'Flush', 'Sold to')).toEqual(['code', null, 'flush', null]);
  });
});

describe('a heading of which only a part is known', () => {
  it('is marked, and one that is known is not', async () => {
    const { columns } = await understood('harvests', 'Batch', 'Total fresh weight in kg', 'Date');
    expect(columns.map(({ field, weak }) => [field, weak ?? false])).toEqual([
      ['batch', false],
      ['fresh', true],
      ['weighedOn', false],
    ]);
  });
});

describe('what the headings themselves say of the container', () => {
  it.each([
    ['N.º de bolsas', 'bag'],
    ['Bags', 'bag'],
    ['Bag no.', 'bag'],
    ['Number of buckets', 'bucket'],
    ['Cantidad de cubos', 'bucket'],
    ['Nº de troncos', 'log'],
    ['Number of beds', 'bed'],
  ])('%s: %s', async (heading, kind) => {
    expect((await understood('notebook', 'Batch', heading)).given).toEqual({ containerKind: kind });
  });

  it('is not taken where a column says it, where two are named, or from a material', async () => {
    expect((await understood('notebook', 'Batch', 'Bags', 'Container')).given).toEqual({});
    expect((await understood('notebook', 'Batch', 'Bags', 'Bucket weight (kg)')).given).toEqual({});
    expect((await understood('notebook', 'Batch', 'Straw in bags')).given).toEqual({});
  });
});
