import type { FieldError } from '@/lib/base/result';
import { unitNumbersOf } from '@/lib/records/fields/unit-numbers-field';
import type { RowValues } from '../read-row';
import { halfNumbered, harvestsOf, type LineHarvest, numberedHarvests } from './numbered-harvests';
import { rawBatch } from './take-batches';
import { rawHarvest } from './take-harvests';

const harvestNames = [
  'weighedOn',
  'fresh',
  'flush',
  'trimState',
  'sold',
  'given',
  'kept',
  'discarded',
  'grade',
];
const numberedNames = numberedHarvests.flatMap(({ fresh, weighedOn }) => [fresh, weighedOn]);
const findingNames = ['contaminated', 'foundOn', 'sign', 'stage', 'action', 'unitNumbers'];

/** The harvests that a line tells of. */
export function lineHarvests(values: RowValues): readonly LineHarvest[] {
  return harvestsOf(values, [...harvestNames, 'note']);
}

/** How many units a line is by the numbers that it gives them: none where it names none. */
export function unitsNamed(values: RowValues): number {
  const text = values.get('unitNumbers');
  return typeof text === 'string' ? (unitNumbersOf(text)?.length ?? 1) : 0;
}

/** What says that there was a harvest or a finding, of which a line must not lose the rest. */
export function halfSaid(values: RowValues): readonly FieldError[] {
  const says = (...names: string[]) => names.some((name) => values.has(name));
  const found = says('contaminated') || (says('foundOn', 'sign') && unitsNamed(values) > 0);
  const harvest = says('sold', 'given', 'kept', 'discarded') || (says('weighedOn') && !found);
  return [
    ...(harvest && lineHarvests(values).length === 0 ? [{ field: 'fresh', code: 'missing' }] : []),
    ...halfNumbered(values).map((field) => ({ field, code: 'missing' })),
    ...(says('foundOn', 'sign') && !found ? [{ field: 'units', code: 'missing' }] : []),
  ];
}

/** Whether a line tells of units found contaminated; a 0 tells of none. A line of one bag need not count it. */
export function saysFinding(values: RowValues): boolean {
  const typed = values.get('contaminated');
  if (typeof typed === 'object' && typed !== null && 'text' in typed) return !/^0*$/.test(String(typed.text));
  return typed !== undefined || (unitsNamed(values) > 0 && (values.has('foundOn') || values.has('sign')));
}

/** What the form of the batch of a line would have posted; `lines` name it. */
export function rawBatchOf(values: RowValues, siteId: string | null, lines: number): unknown {
  const note = lineHarvests(values).length > 0 ? ['note'] : [];
  const without = [...harvestNames, ...numberedNames, ...findingNames, 'unitFilledMass', ...note];
  const own = new Map([...values].filter(([name]) => !without.includes(name)));
  const count = values.get('unitCount') ?? { text: String(lines), unit: null };
  return rawBatch(own.set('unitCount', count), siteId);
}

/** What the form of a harvest of a line would have posted. */
export function rawHarvestOf({ values }: LineHarvest, batch: string): unknown {
  return rawHarvest(new Map(values).set('batch', batch));
}
