import { getTranslations } from 'next-intl/server';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { bedBottoms, bedCovers } from '../sums/bed-sum';

/** What the sums of a batch form aim at when it is not the usual; none of it is recorded. */
export async function planFields(container: ContainerKind): Promise<FieldSpec> {
  const t = await getTranslations('sums');
  const batches = await getTranslations('batches');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const bed: FieldSpec[] = [
    {
      kind: 'select',
      name: 'plan.bedBottom',
      label: label('fields.plan.bedBottom'),
      options: bedBottoms.map((value) => ({ value, label: t(`lines.layers.${value}`) })),
      optional: true,
    },
    {
      kind: 'select',
      name: 'plan.bedCover',
      label: label('fields.plan.bedCover'),
      options: bedCovers.map((value) => ({ value, label: t(`lines.layers.${value}`) })),
      optional: true,
    },
  ];
  return {
    kind: 'group',
    name: 'planGroup',
    legend: batches('groups.plan'),
    hint: batches('hints.plan'),
    folded: true,
    fields: [
      {
        kind: 'decimal',
        name: 'plan.targetMoisture',
        label: label('fields.plan.targetMoisture'),
        hint: t('hints.targetMoisture'),
        suffix: '%',
        optional: true,
      },
      ...(container === 'bed'
        ? bed
        : [
            {
              kind: 'decimal',
              name: 'plan.spawnPercent',
              label: label('fields.plan.spawnPercent'),
              hint: t('hints.spawnPercent'),
              suffix: '%',
              optional: true,
            } satisfies FieldSpec,
          ]),
    ],
  };
}
