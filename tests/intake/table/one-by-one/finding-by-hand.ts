import type { RowValues } from '@/lib/intake/table/read-row';

/** How many harvests a line tells of, in these fields. */
export const harvestsIn = (values: RowValues) => ['fresh', 'fresh2'].filter((name) => values.has(name));

type Open = { readonly field: string; readonly code: string; readonly values?: { readonly date: string } };

/** What a person would write into the form of a finding for a line, and what they would have to be asked first. */
export function findingByHand(
  values: RowValues,
  batch: string,
): { readonly raw: ReadonlyMap<string, unknown>; readonly open: readonly Open[] } {
  const several = harvestsIn(values).length > 1;
  const day = several
    ? undefined
    : (values.has('fresh2') && values.get('weighedOn2')) || values.get('weighedOn');
  const harvested = harvestsIn(values).length > 0 ? day : undefined;
  const foundOn = values.get('foundOn') ?? harvested;
  const late = harvested !== undefined && String(foundOn) >= String(harvested);
  const open: Open[] = [];
  const assumed: string[] = [];
  const assume = (field: string, code: string, name: string, more = {}) => {
    if (values.has(field)) return;
    open.push({ field, code, ...more });
    assumed.push(name);
  };
  if (harvested !== undefined)
    assume('foundOn', 'intake-found-when-weighed', 'the day found (that of the harvest)', {
      values: { date: String(harvested) },
    });
  assume('sign', 'intake-no-sign', 'the sign');
  assume('stage', late ? 'intake-stage-cropping' : 'intake-stage-colonising', 'the stage');
  assume('action', 'intake-left-in-place', 'what was done');
  const raw = new Map<string, unknown>([
    ['batch', batch],
    ['units', values.get('contaminated') ?? { text: '1', unit: null }],
    ['foundOn', foundOn],
    ['sign', values.get('sign') ?? 'other'],
    ['stage', values.get('stage') ?? (late ? 'cropping' : 'colonising')],
    ['action', values.get('action') ?? 'left_in_place'],
    ['unitNumbers', values.get('unitNumbers')],
  ]);
  if (assumed.length > 0)
    raw.set(
      'note',
      `The table did not say, and it was taken to be so when it was brought in: ${assumed.join(', ')}.`,
    );
  return { raw, open };
}
