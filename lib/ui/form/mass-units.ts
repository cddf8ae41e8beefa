import { type ReaderLanguage, readerLocale } from '@/lib/base/reader-locale';
import type { MassUnit } from '@/lib/database/generated/enums';
import { massFieldText } from '@/lib/growing/format-quantity';
import type { ChoiceOption } from './field-spec';

/** Units of a mass field, the person's own first. */
export function massUnits(own: MassUnit): ChoiceOption[] {
  const units = own === 'kg' ? ['kg', 'g', 'lb', 'oz'] : ['lb', 'oz', 'kg', 'g'];
  return units.map((unit) => ({ value: unit, label: unit }));
}

/** In which unit a reader weighs, and how they write numbers. */
export type MassReader = ReaderLanguage & { readonly massUnit: MassUnit };

/** What a mass field holds for stored grams: the reader's own unit, to the gram. */
export function massValues(
  name: string,
  grams: number | null | undefined,
  reader: MassReader,
): Record<string, string> {
  if (grams === null || grams === undefined) return {};
  return {
    [name]: massFieldText(grams, reader.massUnit, readerLocale(reader)),
    [`${name}__unit`]: reader.massUnit,
  };
}
