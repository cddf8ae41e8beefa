import type { FieldError } from '@/lib/base/result';
import type { BatchUnits } from '../batch/batch-units';
import { checkUnitNumbers } from '../batch/check-unit-numbers';
import type { LossInput } from './loss.input';

/**
 * No more units than still stand, of which no more contaminated than stand contaminated, and no more clean than
 * were never found contaminated.
 */
export function checkLoss(input: LossInput, units: BatchUnits): FieldError[] {
  const contaminated = input.contaminatedUnits ?? 0;
  if (input.units > units.live) {
    const values = { units: input.units, available: units.live };
    return [{ field: 'units', code: 'too-many-units', values }];
  }
  if (contaminated > input.units)
    return [{ field: 'contaminatedUnits', code: 'more-than-lost', values: { units: input.units } }];
  if (contaminated > units.contaminatedStanding) {
    const values = { available: units.contaminatedStanding };
    return [{ field: 'contaminatedUnits', code: 'more-than-contaminated', values }];
  }
  if (input.units - contaminated > units.canBeFound) {
    const values = { least: input.units - units.canBeFound };
    return [{ field: 'contaminatedUnits', code: 'fewer-than-contaminated', values }];
  }
  return checkUnitNumbers(input.unitNumbers, {
    units: input.units,
    unitCount: units.inoculated,
    taken: units.namedLost,
  });
}
