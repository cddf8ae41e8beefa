import type { ColumnUnit, TableColumn } from '@/lib/growing/record-table-layout';
import { plainWords } from './plain-words';
import type { TableField } from './table-field';

const unitWords: Readonly<Record<string, ColumnUnit>> = {
  ...{
    kg: 'kg',
    kgs: 'kg',
    kilos: 'kg',
    kilograms: 'kg',
    kilogramos: 'kg',
    g: 'g',
    gr: 'g',
    grams: 'g',
    gramos: 'g',
  },
  ...{ lb: 'lb', lbs: 'lb', pounds: 'lb', libras: 'lb', oz: 'oz', ounces: 'oz', onzas: 'oz' },
  ...{ cm: 'cm', mm: 'mm', m: 'm', in: 'in', inches: 'in', ft: 'ft', m2: 'm2', ft2: 'ft2' },
  ...{ l: 'L', litres: 'L', liters: 'L', litros: 'L', ml: 'mL', gal: 'gal', gallons: 'gal', galones: 'gal' },
  ...{ c: 'celsius', celsius: 'celsius', f: 'fahrenheit', fahrenheit: 'fahrenheit' },
  ...{ min: 'min', mins: 'min', minutes: 'min', minutos: 'min', h: 'h', hrs: 'h', hours: 'h', horas: 'h' },
};

const unitsOf = {
  mass: ['kg', 'g', 'lb', 'oz'],
  length: ['cm', 'mm', 'm', 'in', 'ft'],
  area: ['m2', 'ft2'],
  volume: ['L', 'mL', 'gal'],
  temperature: ['celsius', 'fahrenheit'],
  duration: ['min', 'h'],
} as const;

/** The units that a column of this field can be written in; none for what has no unit. */
export function unitsOfField(field: TableField): readonly ColumnUnit[] {
  return Object.hasOwn(unitsOf, field.cell) ? unitsOf[field.cell as keyof typeof unitsOf] : [];
}

function unitsInHeader(header: string): readonly ColumnUnit[] {
  const words = header
    .toLowerCase()
    .replace('²', '2')
    .split(/[^\p{L}\p{N}]+/u);
  return words.reverse().flatMap((word) => (Object.hasOwn(unitWords, word) ? (unitWords[word] ?? []) : []));
}

/** The unit that a heading names, such as "Fresh (kg)" or "peso_g". */
function unitInHeader(header: string, field: TableField): ColumnUnit | undefined {
  return unitsInHeader(header).find((unit) => unitsOfField(field).includes(unit));
}

const masses: readonly ColumnUnit[] = unitsOf.mass;

/** Whether a heading names a unit of mass for what has none: "1st flush g" is no number of a flush. */
function massOfAnother(header: string, field: TableField): boolean {
  if (field.cell === 'mass' || field.cell === 'text') return false;
  return unitsInHeader(header).some((unit) => masses.includes(unit));
}

function neverSaid(plain: string, { never = [] }: TableField): boolean {
  return plain
    .split(' ')
    .some((word) => never.some((start) => (start.length > 2 ? word.startsWith(start) : word === start)));
}

/**
 * What numbers without a unit are, by common practice: whole masses of a hundred and more are grams of a kitchen scale;
 * baths of more than 130 degrees are in Fahrenheit; lengths of time of less than 25 are hours. Else as the reader writes.
 */
function unitOfValues(
  values: readonly number[],
  field: TableField,
  usual: readonly ColumnUnit[],
): ColumnUnit | null {
  const units = unitsOfField(field);
  if (units.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
  if (field.cell === 'mass' && middle >= 100 && values.every(Number.isInteger)) return 'g';
  if (field.cell === 'temperature' && middle > 130) return 'fahrenheit';
  if (field.cell === 'duration') return values.length > 0 && middle < 25 ? 'h' : 'min';
  return usual.find((unit) => units.includes(unit)) ?? units[0] ?? null;
}

const withoutUnit = (words: string) =>
  words
    .split(' ')
    .filter((word, index) => index === 0 || !Object.hasOwn(unitWords, word))
    .join(' ');

/** How well a heading names a field: 3 as written, 2 but for its unit, 1 as a part of it, 0 not at all. */
function gradeOf(header: string, field: TableField): number {
  const plain = plainWords(header);
  if (plain === '' || massOfAnother(header, field)) return 0;
  const words = [field.name.replace(/([A-Z])/g, ' $1').toLowerCase(), ...field.words];
  if (words.includes(plain)) return 3;
  if (words.includes(withoutUnit(plain))) return 2;
  if (neverSaid(plain, field)) return 0;
  return words.some((word) => word.length > 3 && ` ${plain} `.includes(` ${word} `)) ? 1 : 0;
}

export function headerFits(header: string, fields: readonly TableField[]): boolean {
  return fields.some((field) => gradeOf(header, field) >= 2);
}

/**
 * Which field each column holds, by its heading: the best fit first, each field once; `weak` where only a part of the
 * heading is known. `numbers` are the numbers of each column.
 */
export function mapColumns(
  headers: readonly string[],
  fields: readonly TableField[],
  numbers: readonly (readonly number[])[],
  usual: readonly ColumnUnit[],
): TableColumn[] {
  const columns: (TableField | undefined)[] = headers.map(() => undefined);
  const taken = new Set<TableField>();
  const weak = new Set<number>();
  for (const grade of [3, 2, 1])
    for (const [index, header] of headers.entries()) {
      if (columns[index] !== undefined) continue;
      const field = fields.find((one) => !taken.has(one) && gradeOf(header, one) === grade);
      if (field === undefined) continue;
      taken.add(field);
      if (grade === 1) weak.add(index);
      columns[index] = field;
    }
  return columns.map((field, index) => ({
    field: field?.name ?? null,
    unit:
      field === undefined
        ? null
        : (unitInHeader(headers[index] ?? '', field) ?? unitOfValues(numbers[index] ?? [], field, usual)),
    ...(weak.has(index) ? { weak: true } : {}),
  }));
}
