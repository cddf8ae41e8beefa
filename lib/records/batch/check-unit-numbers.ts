import type { FieldError } from '@/lib/base/result';

/** Unit numbers must exist, be no more than the units reported, and not have been named for the same before. */
export function checkUnitNumbers(
  numbers: readonly number[],
  limits: { readonly units: number; readonly unitCount: number; readonly taken: ReadonlySet<number> },
): FieldError[] {
  const field = 'unitNumbers';
  if (numbers.some((number) => number > limits.unitCount))
    return [{ field, code: 'unit-numbers', values: { available: limits.unitCount } }];
  if (numbers.length > limits.units)
    return [{ field, code: 'more-numbers-than-units', values: { units: limits.units } }];
  const taken = numbers.find((number) => limits.taken.has(number));
  return taken === undefined ? [] : [{ field, code: 'unit-named-before', values: { unit: taken } }];
}
