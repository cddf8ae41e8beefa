import { getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import type { OtherSite } from '../sites/other-site';
import { siteSelect } from '../sites/site-select';
import type { SumKind } from '../sums/work-out';
import { componentFields, spawnFields } from './component-fields';
import { containerFields } from './filled-fields';
import { planFields } from './plan-fields';
import type { StartOptions } from './start-options';

type Ask = {
  readonly container: ContainerKind;
  readonly options: StartOptions;
  /** The way to a site that is not among the options. */
  readonly otherSite?: OtherSite | undefined;
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
  readonly componentRows: number;
  /** Rows for the layers of a bed, where they can be written down. */
  readonly layers?: { readonly rows: number; readonly volumeUnit: VolumeUnit };
  /** Makes the boxes with the sums, where they are shown. */
  readonly sums?: (ask: { name: string; kinds: readonly SumKind[]; heading: string }) => FieldSpec;
  /** Code of the batch that is repeated: what changes from one to the next is asked first. */
  readonly copiedFrom?: string;
  /** A correction that names nobody leaves who did it as it was. */
  readonly correcting?: boolean;
};

/**
 * The form of a batch in the order of the work: where and what, treatment and material, spawn, containers; a repeat
 * the other way round. Only the fields of its container kind; what is rarely needed is folded.
 */
export async function startFields(ask: Ask): Promise<FieldSpec[]> {
  const {
    container,
    options,
    days,
    massUnit,
    componentRows,
    layers,
    sums,
    copiedFrom,
    correcting,
    otherSite,
  } = ask;
  const t = await getTranslations('batches');
  const s = await getTranslations('sums.resultOf');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const worked = (name: string, kinds: readonly SumKind[], heading: string): FieldSpec[] =>
    sums === undefined ? [] : [sums({ name, kinds, heading })];
  const group = (name: 'place' | 'material' | 'spawn' | 'containers', fields: FieldSpec[]): FieldSpec => ({
    kind: 'group',
    name: `${name}Group`,
    legend: t(`groups.${name}`),
    fields,
  });
  const sections = [
    group('place', [
      siteSelect({ sites: options.sites, other: otherSite }, label('fields.siteId')),
      { kind: 'select', name: 'speciesId', label: label('fields.speciesId'), options: options.species },
      { kind: 'date', name: 'inoculatedOn', label: label('fields.inoculatedOn'), quick: days },
    ]),
    group('material', [
      ...(await componentFields(0, options, massUnit)),
      ...worked('materialSums', ['suitability', 'material'], s('material')),
    ]),
    group('spawn', [
      ...(await spawnFields(0, options, massUnit)),
      ...worked('spawnSums', ['batchSpawn'], s('spawn')),
    ]),
    group('containers', [
      ...(await containerFields({ container, woods: options.woods, massUnit, layers, copiedFrom })),
      ...(container === 'bed' ? worked('bedSums', ['bed'], s('bed')) : []),
      ...worked('drySums', ['dry'], s('dry')),
    ]),
  ];
  const further = await Promise.all(
    Array.from({ length: componentRows - 1 }, (_, row) => componentFields(row + 1, options, massUnit)),
  );
  return [
    ...(copiedFrom === undefined ? sections : sections.reverse()),
    ...(sums === undefined || container === 'log' ? [] : [await planFields(container)]),
    {
      kind: 'group',
      name: 'moreMaterials',
      legend: t('groups.moreMaterials'),
      hint: t('hints.moreMaterials'),
      folded: true,
      fields: further.flat(),
    },
    {
      kind: 'group',
      name: 'moreSpawn',
      legend: t('groups.moreSpawn'),
      folded: true,
      fields: await spawnFields(1, options, massUnit),
    },
    {
      kind: 'select',
      name: 'startedById',
      label: label('fields.startedById'),
      options: options.colleagues,
      emptyLabel: t(correcting ? 'starterAsItWas' : 'starterIsMe'),
      optional: true,
    },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    { kind: 'hidden', name: 'containerKind' },
  ];
}
