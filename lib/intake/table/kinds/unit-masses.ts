import { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { ok, type Result } from '@/lib/base/result';
import { massField } from '@/lib/records/fields/mass-field';
import { unitNumbersOf } from '@/lib/records/fields/unit-numbers-field';
import { codeForm } from '../plain-words';
import type { RowToTake, TakeSettings } from '../taker';
import type { StartInput } from './notebook-parts';

const typedMass = z.object({ mass: massField() });

function gramsOf(typed: unknown, region: string): Result<number> {
  const read = parseInput(typedMass, { mass: typed }, region);
  return read.kind === 'ok' ? ok(read.value.mass) : read;
}

/** What was filled into the units of each batch that lines name one by one: by the form of its code. */
export type UnitMasses = ReadonlyMap<string, { readonly units: number; readonly grams: number }>;

/** Sums up what the lines of a whole table say of single units; a unit that several lines name counts once. */
export async function unitMasses({ textsOf, unitOf, region }: TakeSettings): Promise<UnitMasses> {
  const sums = new Map<string, { units: number; grams: number }>();
  const seen = new Set<string>();
  for (const [code = '', named = '', text = ''] of await textsOf(['code', 'unitNumbers', 'unitFilledMass'])) {
    const grams = gramsOf({ text, unit: unitOf('unitFilledMass') }, region);
    const key = JSON.stringify([codeForm(code), named]);
    if (named === '' || text === '' || grams.kind !== 'ok' || seen.has(key)) continue;
    seen.add(key);
    const units = unitNumbersOf(named)?.length ?? 1;
    const sum = sums.get(codeForm(code)) ?? { units: 0, grams: 0 };
    sums.set(codeForm(code), { units: sum.units + units, grams: sum.grams + units * grams.value });
  }
  return sums;
}

/**
 * A batch with the mass that its units were filled with, where a line says that of one unit: all together where lines
 * name the units one by one, else as many times as it has units. Where only some were weighed, nothing is made up.
 */
export function filledByUnits(
  start: StartInput,
  { values, confirmed }: RowToTake,
  masses: UnitMasses,
  region: string,
): Result<StartInput> {
  const typed = values.get('unitFilledMass');
  if (typed === undefined || start.filledMass !== null) return ok(start);
  const ofOne = gramsOf(typed, region);
  if (ofOne.kind !== 'ok')
    return { kind: 'invalid', errors: [{ field: 'unitFilledMass', code: 'not-a-number' }] };
  const filled = (grams: number) => ok({ ...start, filledMass: { grams, entered: null } });
  if (!values.has('unitNumbers')) return filled(ofOne.value * start.unitCount);
  const { units, grams } = masses.get(codeForm(String(values.get('code')))) ?? { units: 0, grams: 0 };
  if (units === start.unitCount) return filled(grams);
  return confirmed.has('intake-some-units-weighed')
    ? ok(start)
    : {
        kind: 'confirm',
        questions: [
          {
            field: 'unitFilledMass',
            code: 'intake-some-units-weighed',
            values: { count: units, units: start.unitCount },
          },
        ],
      };
}
