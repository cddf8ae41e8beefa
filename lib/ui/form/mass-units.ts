import type { MassUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption } from './field-spec';

/** Units of a mass field, the person's own first. */
export function massUnits(own: MassUnit): ChoiceOption[] {
  const units = own === 'kg' ? ['kg', 'g', 'lb', 'oz'] : ['lb', 'oz', 'kg', 'g'];
  return units.map((unit) => ({ value: unit, label: unit }));
}

/** What a mass field holds for stored grams: kilograms or decimal pounds would round, so grams are shown. */
export function massValues(name: string, grams: number | null | undefined): Record<string, string> {
  return grams === null || grams === undefined ? {} : { [name]: String(grams), [`${name}__unit`]: 'g' };
}
