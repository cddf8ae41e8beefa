import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { containerKinds } from '@/lib/growing/vocabulary';
import type { BatchFilter } from '@/lib/records/batch/batch-filter.input';
import { dateValues } from '../form/date-values';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { FilterForm } from '../form/filter-form';
import { namedOptions } from '../form/named-options';
import { formatDate } from '../format/date-text';
import { addressWith } from '../table/address-with';

type Named = { readonly id: string; readonly en: string; readonly es: string };
type Props = {
  readonly filter: BatchFilter;
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  readonly species: readonly Named[];
  readonly methods: readonly Named[];
  readonly language: Language;
};

/** The filters of the list of batches, all of them in its address. */
export async function BatchFilterForm({ filter, address, sites, species, methods, language }: Props) {
  const t = await getTranslations('batches');
  const kinds = await getTranslations('vocabulary.containerKind');
  const locale = await getLocale();
  const choices: Record<'site' | 'method' | 'species' | 'container' | 'state', ChoiceOption[]> = {
    site: sites.map(({ id, name }) => ({ value: id, label: name })),
    method: [...namedOptions(methods, language), { value: 'mixed', label: t('mixedMethod') }],
    species: namedOptions(species, language),
    container: containerKinds.map((value) => ({ value, label: kinds(value) })),
    state: (['open', 'closed'] as const).map((value) => ({ value, label: t(`list.${value}`) })),
  };
  const names = ['site', 'method', 'species', 'container', 'state'] as const;
  const selects = names.map(
    (name): FieldSpec => ({
      kind: 'select',
      name,
      label: t(`list.filter.${name}`),
      options: choices[name],
      optional: true,
      emptyLabel: t('list.all'),
    }),
  );
  const without = (name: string) =>
    addressWith('/batches', address, {
      ...{ [name]: undefined, [`${name}__quick`]: undefined, [`${name}__day`]: undefined },
      ...{ [`${name}__month`]: undefined, [`${name}__year`]: undefined },
      ...{ after: undefined, before: undefined },
    }) as Route;
  const chips = [
    ...names.flatMap((name) => {
      const label = choices[name].find(({ value }) => value === filter[name])?.label;
      return label === undefined ? [] : [{ label, without: without(name) }];
    }),
    ...(['from', 'to'] as const).flatMap((name) => {
      const date = filter[name];
      const label = date === null ? undefined : t(`list.chip.${name}`, { date: formatDate(date, locale) });
      return label === undefined ? [] : [{ label, without: without(name) }];
    }),
    ...(filter.code === null
      ? []
      : [{ label: t('list.chip.code', { code: filter.code }), without: without('code') }]),
    ...(filter.voided === null ? [] : [{ label: t('list.chip.voided'), without: without('voided') }]),
  ];
  return (
    <FilterForm
      action={'/batches' as Route}
      fields={[
        ...selects,
        { kind: 'date', name: 'from', label: t('list.filter.from'), optional: true, quick: [] },
        { kind: 'date', name: 'to', label: t('list.filter.to'), optional: true, quick: [] },
        {
          kind: 'text',
          name: 'code',
          label: t('list.filter.code'),
          hint: t('list.codeHint'),
          width: 'short',
          optional: true,
        },
      ]}
      values={{
        ...Object.fromEntries(names.map((name) => [name, filter[name] ?? ''])),
        ...dateValues('from', filter.from),
        ...dateValues('to', filter.to),
        code: filter.code ?? '',
      }}
      chips={chips}
    />
  );
}
