import { getTranslations } from 'next-intl/server';
import type { MassUnit, MethodKind, TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
import type { FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { temperatureUnits, volumeUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { fuelKinds } from '../sums/heat-sum';
import type { SumKind } from '../sums/work-out';

type Person = {
  readonly massUnit: MassUnit;
  readonly temperatureUnit: TemperatureUnit;
  readonly volumeUnit: VolumeUnit;
};
type MakeSums = (ask: { name: string; kinds: readonly SumKind[]; heading: string }) => FieldSpec;

/** What a load and its bath hold, by method: lime only for a lime soak, heat only where something is heated. */
export async function bathFields(
  methodKind: MethodKind,
  person: Person,
  sums: MakeSums | undefined,
): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const s = await getTranslations('sums');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const load: FieldSpec = {
    kind: 'mass',
    name: 'load',
    label: label('fields.load'),
    hint: t('hints.load'),
    units: massUnits(person.massUnit),
    optional: true,
  };
  const water: FieldSpec = {
    kind: 'volume',
    name: 'water',
    label: label('fields.water'),
    units: volumeUnits(person.volumeUnit),
    optional: true,
  };
  const heat = (name: 'waterCelsius' | 'startCelsius' | 'targetCelsius'): FieldSpec => ({
    kind: 'temperature',
    name: `plan.${name}`,
    label: sentenceCase(s(`fields.plan.${name}`)),
    units: temperatureUnits(person.temperatureUnit),
    optional: true,
  });
  const forSums = (fields: FieldSpec[], made: FieldSpec): FieldSpec[] => [
    {
      kind: 'group',
      name: 'planGroup',
      legend: t('groups.sums'),
      hint: t('hints.sums'),
      folded: true,
      fields,
    },
    made,
  ];
  switch (methodKind) {
    case 'cold_lime_soak':
      return [
        load,
        water,
        {
          kind: 'mass',
          name: 'lime',
          label: label('fields.lime'),
          hint: t('hints.lime'),
          units: massUnits(person.massUnit),
          optional: true,
        },
        ...(sums === undefined
          ? []
          : forSums(
              [
                heat('waterCelsius'),
                {
                  kind: 'decimal',
                  name: 'plan.gramsPerLitre',
                  label: sentenceCase(s('fields.plan.gramsPerLitre')),
                  suffix: 'g/L',
                  hint: s('hints.gramsPerLitre'),
                  optional: true,
                },
              ],
              sums({ name: 'limeSums', kinds: ['lime'], heading: s('resultOf.lime') }),
            )),
      ];
    case 'hot_water_bath':
      return [
        load,
        water,
        ...(sums === undefined
          ? []
          : forSums(
              [
                heat('startCelsius'),
                heat('targetCelsius'),
                {
                  kind: 'select',
                  name: 'plan.fuel',
                  label: sentenceCase(s('fields.plan.fuel')),
                  options: fuelKinds.map((value) => ({
                    value,
                    label: sentenceCase(s(`lines.fuels.${value}`)),
                  })),
                  optional: true,
                },
              ],
              sums({ name: 'heatSums', kinds: ['heat'], heading: s('resultOf.heat') }),
            )),
      ];
    case 'cold_ferment':
      return [load, water];
    case 'steam':
    case 'untreated':
      return [load];
  }
}
