import type { FieldError } from '@/lib/base/result';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { findLogWood } from '@/lib/growing/log-wood';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { BatchInput } from './batch-fields.input';

// Common practice with a wide margin: kilograms of wet substrate that one unit can hold at all.
const mostKgPerUnit: Readonly<Record<ContainerKind, number>> = {
  bag: 300,
  bucket: 300,
  tray: 1_000,
  bed: 100_000,
  log: 1_000,
  block: 100,
};

/** Mass filled of the substrate alone, grams: the spawn in it is taken off. Undefined when that cannot be. */
export function filledGramsOf(input: BatchInput): number | null | undefined {
  const { filledMass, filledWith, spawn } = input;
  if (filledMass === null) return null;
  if (filledWith !== 'with_spawn') return filledMass.grams;
  if (spawn.length === 0 || spawn.some(({ mass }) => mass === null)) return undefined;
  const left = filledMass.grams - spawn.reduce((sum, { mass }) => sum + (mass ?? 0), 0);
  return left > 0 ? left : undefined;
}

function checkMasses(input: BatchInput): FieldError[] {
  const errors: FieldError[] = [];
  const filled = filledGramsOf(input);
  if (filled === undefined) errors.push({ field: 'filledMass', code: 'spawn-mass-needed' });
  const most = mostKgPerUnit[input.containerKind] * 1000 * input.unitCount;
  if (filled !== null && filled !== undefined && filled > most)
    errors.push({ field: 'filledMass', code: 'impossible-per-unit', values: { units: input.unitCount } });
  for (const [index, { mass }] of input.components.entries()) {
    if (mass !== null && mass > most) {
      const values = { units: input.unitCount };
      errors.push({ field: `components.${index}.mass`, code: 'impossible-per-unit', values });
    }
  }
  if (input.moistureSource === 'measured' && input.moisturePercent === null)
    errors.push({ field: 'moisturePercent', code: 'missing' });
  return errors;
}

function checkContainer(input: BatchInput): FieldError[] {
  const errors: FieldError[] = [];
  if (input.containerKind === 'bed' && input.unitCount !== 1)
    errors.push({ field: 'unitCount', code: 'bed-is-one' });
  const { logWoodCode } = input;
  if (input.containerKind === 'log' && logWoodCode !== null && !findLogWood(logWoodCode))
    errors.push({ field: 'logWoodCode', code: 'not-an-option' });
  return errors;
}

/** What cannot be, whatever was looked up. `components` may be empty only for a second life. */
export function checkBatch(
  input: BatchInput,
  options: { readonly today: CalendarDate; readonly secondLife: boolean },
): FieldError[] {
  const errors: FieldError[] = [];
  if (input.inoculatedOn > options.today) errors.push({ field: 'inoculatedOn', code: 'future-date' });
  if (!options.secondLife && !input.components.some(({ role }) => role === 'substrate'))
    errors.push({ field: 'components.0.lotId', code: 'missing-choice' });
  const lots = input.spawn.map(({ lotId }) => lotId);
  const twice = lots.findIndex((lotId, index) => lots.indexOf(lotId) < index);
  if (twice >= 0) errors.push({ field: `spawn.${twice}.lotId`, code: 'chosen-twice' });
  return [...errors, ...checkContainer(input), ...checkMasses(input)];
}
