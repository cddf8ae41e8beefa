import { getTranslations } from 'next-intl/server';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import type { ComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import { mixed, notRecorded, secondLife, together } from '@/lib/analysis/comparison/comparison-filter.input';
import type { Language } from '@/lib/database/generated/enums';

/** Names of methods and sites as the comparison writes them. */
export async function placeNames(choices: ComparisonChoices, language: Language) {
  const t = await getTranslations('comparison');
  const methodName = (key: string | undefined): string => {
    if (key === undefined) return t('allMethods');
    if (key === mixed) return t('mixedMethod');
    if (key === secondLife) return t('secondLife');
    if (key === notRecorded) return t('methodNotRecorded');
    return choices.methods.find((method) => method.id === key)?.[language] ?? t('methodNotRecorded');
  };
  const siteName = (id: string | undefined): string =>
    id === undefined ? t('allSites') : (choices.sites.find((site) => site.id === id)?.name ?? '–');
  const materialName = (key: string): string => {
    if (key === together) return t('scope.anyMaterial');
    if (key === mixed) return t('scope.mixedMaterial');
    return choices.materials.find((material) => material.id === key)?.[language] ?? '–';
  };
  const speciesName = (key: string): string =>
    key === together
      ? t('scope.allSpecies')
      : (choices.species.find((species) => species.id === key)?.[language] ?? '–');
  const sorted = (rows: readonly ComparedRow[]): ComparedRow[] =>
    [...rows].sort(
      (a, b) =>
        methodName(a.method).localeCompare(methodName(b.method), language) ||
        siteName(a.site).localeCompare(siteName(b.site), language),
    );
  return { methodName, siteName, materialName, speciesName, sorted };
}

export type PlaceNames = Awaited<ReturnType<typeof placeNames>>;
