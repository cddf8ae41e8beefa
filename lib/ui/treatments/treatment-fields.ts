import { getTranslations } from 'next-intl/server';
import type { MassUnit, MethodKind, TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';
import { type SiteBox, siteSelect } from '../sites/site-select';
import type { SumKind } from '../sums/work-out';
import { bathFields } from './bath-fields';
import { careOf } from './method-care';

type Options = {
  readonly kind: 'start' | 'correct';
  readonly methodKind: MethodKind;
  readonly site: SiteBox;
  /** Where the method can be changed in the form; starting chooses it beforehand. */
  readonly methods?: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  readonly person: { massUnit: MassUnit; temperatureUnit: TemperatureUnit; volumeUnit: VolumeUnit };
  readonly sums?: (ask: { name: string; kinds: readonly SumKind[]; heading: string }) => FieldSpec;
};

/** A load that was heated has to cool before spawn goes in. */
const heated: ReadonlySet<MethodKind> = new Set(['hot_water_bath', 'steam']);

/** The form of a treatment run: only what its method has, the cautions of that method, and its sums. */
export async function treatmentFields(ask: Options): Promise<FieldSpec[]> {
  const { kind, methodKind, site, methods, days, person, sums } = ask;
  const t = await getTranslations('treatments');
  const common = await getTranslations('common');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const over: FieldSpec[] = [
    {
      kind: 'moment',
      name: 'endedAt',
      label: label('fields.endedAt'),
      hint: t('hints.endedAt'),
      quick: days,
      optional: true,
    },
    ...(heated.has(methodKind)
      ? [
          {
            kind: 'temperature',
            name: 'loadCelsiusAtSpawning',
            label: label('fields.loadCelsiusAtSpawning'),
            hint: t('hints.loadCelsiusAtSpawning'),
            units: temperatureUnits(person.temperatureUnit),
            optional: true,
          } satisfies FieldSpec,
        ]
      : []),
  ];
  const care = careOf[methodKind];
  return [
    siteSelect(site, label('fields.siteId')),
    methods === undefined
      ? { kind: 'hidden', name: 'methodId' }
      : { kind: 'select', name: 'methodId', label: label('fields.methodId'), options: methods },
    ...(care.length === 0
      ? []
      : [
          {
            kind: 'caution',
            name: 'care',
            title: common('caution.title'),
            lines: [...care.map((one) => t(`care.${one}`)), common('caution.rule')],
          } satisfies FieldSpec,
        ]),
    {
      kind: 'moment',
      name: 'startedAt',
      label: label('fields.startedAt'),
      hint: t('hints.startedAt'),
      quick: days,
    },
    ...(await bathFields(methodKind, person, sums)),
    ...(kind === 'correct'
      ? over
      : [{ kind: 'group', name: 'over', legend: t('groups.over'), folded: true, fields: over } as const]),
    {
      kind: 'text',
      name: 'code',
      label: label('fields.code'),
      hint: t('hints.code'),
      optional: true,
      width: 'short',
    },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    ...(kind === 'correct' ? await correctionFields() : [{ kind: 'hidden', name: 'id' } as const]),
  ];
}
