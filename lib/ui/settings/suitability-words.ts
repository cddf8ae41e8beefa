import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { SuitabilityLine, SuitabilityList } from '@/lib/records/settings/list-suitability.query';
import type { StatusTone } from '../page/status';

export const toneOfVerdict = {
  suits: 'good',
  possible: 'watch',
  unsuited: 'bad',
} as const satisfies Record<SuitabilityLine['verdict'], StatusTone>;

/** Writes the two things that a row is about: "Shiitake, straw" or "Straw, cold lime soak". */
export async function suitabilityNames(list: SuitabilityList, language: Language) {
  const words = await getTranslations('vocabulary');
  const species = (id: string) => list.species.find((one) => one.id === id)?.[language] ?? '';
  const material = (kind: NonNullable<SuitabilityLine['materialKind']>) => words(`materialKind.${kind}`);
  const method = (kind: NonNullable<SuitabilityLine['methodKind']>) => words(`methodKind.${kind}`);
  /** What a row of a species is about besides the species. */
  const subject = ({ materialKind, methodKind }: SuitabilityLine) =>
    [materialKind === null ? [] : [material(materialKind)], methodKind === null ? [] : [method(methodKind)]]
      .flat()
      .join(' · ');
  const whole = (row: SuitabilityLine) =>
    row.speciesId === null ? subject(row) : `${species(row.speciesId)} · ${subject(row)}`;
  return { species, subject, whole };
}
