import type { FieldError } from '@/lib/base/result';
import type { BatchUnits } from '../batch/batch-units';
import { checkUnitNumbers } from '../batch/check-unit-numbers';
import type { FindingInput } from './finding.input';

/** No more units than can still be found contaminated, and unit numbers that exist and are new. */
export function checkFinding(
  input: FindingInput,
  units: Pick<BatchUnits, 'inoculated' | 'canBeFound' | 'namedContaminated'>,
): FieldError[] {
  if (input.units > units.canBeFound) {
    const values = { units: input.units, available: units.canBeFound };
    return [{ field: 'units', code: 'too-many-units', values }];
  }
  return checkUnitNumbers(input.unitNumbers, {
    units: input.units,
    unitCount: units.inoculated,
    taken: units.namedContaminated,
  });
}
