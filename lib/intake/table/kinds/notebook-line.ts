import type { FieldError } from '@/lib/base/result';
import type { RowValues } from '../read-row';
import { rawBatch } from './take-batches';
import { rawFinding } from './take-findings';
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
const findingNames = ['contaminated', 'foundOn', 'sign'];

/** What says that there was a harvest or a finding, of which a line must not lose the rest. */
export function halfSaid(values: RowValues): readonly FieldError[] {
  const says = (...names: string[]) => names.some((name) => values.has(name));
  const found = says('contaminated');
  const harvest = says('sold', 'given', 'kept', 'discarded') || (says('weighedOn') && !found);
  return [
    ...(harvest && !says('fresh') ? [{ field: 'fresh', code: 'missing' }] : []),
    ...(says('foundOn', 'sign') && !found ? [{ field: 'units', code: 'missing' }] : []),
  ];
}

/** Whether a line tells of units found contaminated; a 0 tells of none. */
export function saysFinding(values: RowValues): boolean {
  const typed = values.get('contaminated');
  if (typeof typed === 'object' && typed !== null && 'text' in typed) return !/^0*$/.test(String(typed.text));
  return typed !== undefined;
}

/** What the form of the batch of a line would have posted; `lines` name it. */
export function rawBatchOf(values: RowValues, siteId: string | null, lines: number): unknown {
  const without = [...harvestNames, ...findingNames, ...(values.has('fresh') ? ['note'] : [])];
  const own = new Map([...values].filter(([name]) => !without.includes(name)));
  const count = values.get('unitCount') ?? { text: String(lines), unit: null };
  return rawBatch(own.set('unitCount', count), siteId);
}

/** What the form of the harvest of a line would have posted. */
export function rawHarvestOf(values: RowValues, batch: string): unknown {
  const own = new Map([...values].filter(([name]) => name === 'note' || harvestNames.includes(name)));
  return rawHarvest(own.set('batch', batch));
}

/** What the form of the finding of a line would have posted; one without a day was made on that of the harvest. */
export function rawFindingOf(values: RowValues, batch: string): unknown {
  return rawFinding(
    new Map<string, unknown>([
      ['batch', batch],
      ['units', values.get('contaminated')],
      ['foundOn', values.get('foundOn') ?? values.get('weighedOn')],
      ['sign', values.get('sign') ?? 'other'],
    ]),
  );
}
