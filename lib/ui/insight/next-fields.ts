import { getTranslations } from 'next-intl/server';
import {
  equipmentField,
  type NextAsked,
  seasonChoices,
  theseMethods,
  wholeYear,
} from '@/lib/analysis/next-question/next-choice.input';
import type { NextOptions } from '@/lib/analysis/next-question/read-next-options';
import { seasons } from '@/lib/growing/season';
import { containerKinds } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import type { InsightWords } from './insight-words';
import { seasonAndMonths } from './season-words';

type Sites = { readonly options: readonly ChoiceOption[]; readonly none: string };

/** What is chosen for a site's next batch; each empty choice says what is taken instead. */
export async function nextFields(
  options: NextOptions,
  sites: Sites,
  words: InsightWords,
): Promise<FieldSpec[]> {
  const { t, names, language } = words;
  const kinds = await getTranslations('vocabulary.containerKind');
  const sorted = (some: readonly ChoiceOption[]) =>
    [...some].sort((a, b) => a.label.localeCompare(b.label, language));
  const materials = (here: boolean) =>
    sorted(
      options.materials
        .filter((one) => one.here === here)
        .map(({ id }) => ({
          value: id,
          label: names.materialName(id),
          ...(here ? { hint: t('next.form.here') } : {}),
        })),
    );
  const inSeason = (code: string) => {
    const { name, months } = seasonAndMonths(code, options.hemisphere, words);
    return t('next.form.seasonOption', { name, months });
  };
  return [
    sites.options.length < 2
      ? { kind: 'hidden', name: 'site' }
      : {
          kind: 'select',
          name: 'site',
          label: t('next.form.site'),
          emptyLabel: sites.none,
          options: sorted(sites.options),
        },
    {
      kind: 'select',
      name: 'species',
      label: t('next.form.species'),
      emptyLabel: t('next.form.mostGrown'),
      options: sorted(options.species.map((id) => ({ value: id, label: names.speciesName(id) }))),
    },
    {
      kind: 'select',
      name: 'material',
      label: t('next.form.material'),
      emptyLabel: t('next.form.mostUsed'),
      options: [...materials(true), ...materials(false)],
    },
    {
      kind: 'select',
      name: 'season',
      label: t('next.form.season'),
      emptyLabel: t('next.form.today', { season: inSeason(seasons[options.season]) }),
      options: seasonChoices.map((one) => ({
        value: one,
        label: one === wholeYear ? t('next.form.year') : sentenceCase(inSeason(seasons[one])),
      })),
    },
    {
      kind: 'select',
      name: 'container',
      label: t('next.form.container'),
      emptyLabel: t('next.form.mostContainers'),
      options: containerKinds.map((kind) => ({ value: kind, label: kinds(kind) })),
    },
    {
      kind: 'several',
      name: 'methods',
      label: t('next.form.methods'),
      hint: t('next.form.methodsHint'),
      options: sorted(options.methods.map((id) => ({ value: id, label: names.methodName(id) }))),
    },
    { kind: 'hidden', name: equipmentField },
  ];
}

export function nextValues(
  { species, material, season, container, methods }: NextAsked,
  options: NextOptions,
) {
  return {
    site: options.siteId,
    species: species ?? '',
    material: material ?? '',
    season: season ?? '',
    container: container ?? '',
    methods: methods ?? options.equipment.usable,
    [equipmentField]: theseMethods,
  };
}
