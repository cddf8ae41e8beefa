import { getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { type ContainerKind, secondLifeWays } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { type SiteBox, siteSelect } from '../sites/site-select';
import { bedAreaField, foldedLayers } from './bed-log-fields';
import { sourceFields } from './source-fields';

type Ask = {
  /** What the units are now. Spent logs stay logs and do not go on as new ones. */
  readonly container: Exclude<ContainerKind, 'log'>;
  readonly site: SiteBox;
  readonly days: readonly ChoiceOption[];
  /** Batches that can give units. */
  readonly batches: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
  /** A start also asks for the layers of a bed and keeps its first source fixed. */
  readonly start?: { readonly volumeUnit: VolumeUnit; readonly standing: number };
};

const layerRows = 4;

/** A spent batch goes on elsewhere: how many units, how, where, and what it is now. */
export async function secondLifeFields(ask: Ask): Promise<FieldSpec[]> {
  const { container, site, days, batches, massUnit, start } = ask;
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary');
  const common = await getTranslations('common');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const isBed = container === 'bed';
  return [
    ...(start === undefined
      ? await sourceFields(batches, [0, 1, 2])
      : ([
          {
            kind: 'whole',
            name: 'sources.0.units',
            label: label('fields.sources.units'),
            hint: t('hints.unitsMoved', { count: start.standing }),
          },
          {
            kind: 'group',
            name: 'moreSources',
            legend: t('groups.moreSources'),
            folded: true,
            fields: await sourceFields(batches, [1, 2]),
          },
        ] satisfies FieldSpec[])),
    {
      kind: 'radio',
      name: 'way',
      label: label('fields.way'),
      hint: t('hints.way'),
      options: secondLifeWays.map((value) => ({ value, label: words(`secondLifeWay.${value}`) })),
      optional: true,
    },
    siteSelect(site, label('fields.siteId')),
    { kind: 'date', name: 'inoculatedOn', label: t('movedOn'), quick: days },
    ...(isBed
      ? [
          { ...(await bedAreaField({ massUnit })), optional: true } as FieldSpec,
          ...(start === undefined
            ? []
            : [await foldedLayers({ massUnit, volumeUnit: start.volumeUnit }, layerRows)]),
          { kind: 'hidden', name: 'unitCount' } as const,
        ]
      : [{ kind: 'whole', name: 'unitCount', label: t(`unitCount.${container}`) } as const]),
    {
      kind: 'group',
      name: 'more',
      legend: common('more'),
      folded: true,
      fields: [{ kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true }],
    },
    { kind: 'hidden', name: 'containerKind' },
    ...(start === undefined ? [] : [{ kind: 'hidden', name: 'sources.0.batchId' } as const]),
    { kind: 'hidden', name: 'speciesId' },
    { kind: 'hidden', name: 'moistureSource' },
    ...(start === undefined ? [] : [{ kind: 'hidden', name: 'id' } as const]),
  ];
}
