import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ProgrammeFilter } from '@/lib/records/programme/programme-filter.input';
import type { SiteName } from '@/lib/records/site/list-site-names.query';
import { dateValues } from '../form/date-values';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { FilterForm } from '../form/filter-form';
import { formatDate } from '../format/date-text';
import { addressWith } from '../table/address-with';

/** The choice that only this list has. */
type OwnFilter =
  | {
      readonly name: 'topic' | 'outlet' | 'practice';
      readonly label: string;
      readonly options: readonly ChoiceOption[];
    }
  | { readonly name: 'name'; readonly label: string };

export type ProgrammeFilterProps = {
  readonly path: string;
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
  readonly filter: ProgrammeFilter;
  readonly sites: readonly SiteName[];
  readonly own: OwnFilter;
};

/** Filters of a list of the programme: its site, its days, and one choice of its own. */
export async function ProgrammeFilterForm({ path, address, filter, sites, own }: ProgrammeFilterProps) {
  const t = await getTranslations('programme.filter');
  const locale = await getLocale();
  const dated = own.name !== 'name';
  const chosen = filter[own.name];
  const without = (...names: readonly string[]) =>
    addressWith(
      path,
      address,
      Object.fromEntries([...names, 'after'].map((name) => [name, undefined])),
    ) as Route;
  const dateNames = (name: string) => ['quick', 'day', 'month', 'year'].map((part) => `${name}__${part}`);
  const fields: FieldSpec[] = [
    {
      kind: 'select',
      name: 'site',
      label: t('site'),
      optional: true,
      options: sites.map(({ id, name }) => ({ value: id, label: name })),
    },
    'options' in own
      ? { kind: 'select', name: own.name, label: own.label, optional: true, options: own.options }
      : { kind: 'text', name: own.name, label: own.label, optional: true },
    ...(dated
      ? ([
          { kind: 'date', name: 'from', label: t('from'), optional: true, quick: [] },
          { kind: 'date', name: 'to', label: t('to'), optional: true, quick: [] },
        ] satisfies FieldSpec[])
      : []),
  ];
  const siteName = sites.find(({ id }) => id === filter.site)?.name;
  const chips = [
    ...(siteName === undefined ? [] : [{ label: siteName, without: without('site') }]),
    ...(chosen === null
      ? []
      : [
          {
            label:
              'options' in own
                ? (own.options.find(({ value }) => value === chosen)?.label ?? chosen)
                : chosen,
            without: without(own.name),
          },
        ]),
    ...(['from', 'to'] as const).flatMap((name) => {
      const day = filter[name];
      return !dated || day === null
        ? []
        : [
            {
              label: `${t(name)} ${formatDate(day, locale)}`,
              without: without(name, ...dateNames(name)),
            },
          ];
    }),
  ];
  return (
    <FilterForm
      action={path as Route}
      fields={fields}
      values={{
        site: filter.site ?? '',
        [own.name]: chosen ?? '',
        ...dateValues('from', filter.from),
        ...dateValues('to', filter.to),
      }}
      chips={chips}
    />
  );
}
