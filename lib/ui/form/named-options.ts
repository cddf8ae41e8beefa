import type { Language } from '@/lib/database/generated/enums';
import type { ChoiceOption } from './field-spec';

type Named = {
  readonly id: string;
  readonly en: string;
  readonly es: string;
  readonly scientificName?: string;
};

/** Choices by name in the reader's language, in alphabetical order; a species shows its scientific name too. */
export function namedOptions(rows: readonly Named[], language: Language): ChoiceOption[] {
  return rows
    .map((row) => ({
      value: row.id,
      label: row.scientificName === undefined ? row[language] : `${row[language]} (${row.scientificName})`,
    }))
    .sort((a, b) => a.label.localeCompare(b.label, language));
}
