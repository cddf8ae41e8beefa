import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { type NextAsked, queryOfNext, wholeYear } from '@/lib/analysis/next-question/next-choice.input';
import type { FilterChip } from '../form/filter-form';
import type { InsightWords } from './insight-words';

/** What was chosen for the site, each with the address without it. */
export async function nextChips(asked: NextAsked, { t, names }: InsightWords): Promise<FilterChip[]> {
  const kinds = await getTranslations('vocabulary.containerKind');
  const { species, material, season, container, methods } = asked;
  const without = (name: keyof NextAsked) =>
    `/questions/next?${queryOfNext({ ...asked, [name]: undefined })}` as Route;
  const chip = <T>(name: keyof NextAsked, value: T | undefined, label: (value: T) => string): FilterChip[] =>
    value === undefined ? [] : [{ label: label(value), without: without(name) }];
  return [
    ...chip('species', species, (id) => t('next.form.chip.species', { name: names.speciesName(id) })),
    ...chip('material', material, (id) => t('next.form.chip.material', { name: names.materialName(id) })),
    ...chip('season', season, (one) =>
      t('next.form.chip.season', {
        name: one === wholeYear ? t('next.form.year') : t(`next.seasonName.${one}`),
      }),
    ),
    ...chip('container', container, (kind) => t('next.form.chip.container', { name: kinds(kind) })),
    ...chip('methods', methods, () => t('next.form.chip.methods')),
  ];
}
