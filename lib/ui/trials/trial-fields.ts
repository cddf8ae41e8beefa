import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { NetworkChoices } from '@/lib/records/network/list-choices.query';
import { mostArms, trialContainers, trialOutcomes } from '@/lib/records/trial/trial.input';
import type { FieldSpec } from '../form/field-spec';
import { namedOptions } from '../form/named-options';
import { sentenceCase } from '../format/sentence-case';

type Ask = {
  readonly choices: NetworkChoices;
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  readonly language: Language;
};

/** The plan of a trial in the order in which it is thought: the question, what is compared, where, how many, when. */
export async function trialFields({ choices, sites, language }: Ask): Promise<FieldSpec[]> {
  const t = await getTranslations('trials');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const methods = namedOptions(choices.methods, language);
  const arm = (index: number): FieldSpec[] => [
    {
      kind: 'text',
      name: `arms.${index}.label`,
      label: t('groups.arm', { number: index + 1 }),
      ...(index === 0 ? { hint: t('hints.arm') } : {}),
      ...(index > 1 ? { optional: true } : {}),
    },
    {
      kind: 'select',
      name: `arms.${index}.methodId`,
      label: label('fields.arms.methodId'),
      ...(index === 0 ? { hint: t('hints.methodId') } : {}),
      optional: true,
      options: methods,
      emptyLabel: '–',
    },
  ];
  const points = t('points');
  return [
    { kind: 'text', name: 'title', label: label('fields.title') },
    {
      kind: 'text',
      name: 'question',
      label: label('fields.question'),
      hint: t('hints.question'),
      width: 'long',
    },
    {
      kind: 'radio',
      name: 'outcome',
      label: label('fields.outcome'),
      options: trialOutcomes.map((value) => ({ value, label: t(`outcome.${value}`) })),
    },
    {
      kind: 'select',
      name: 'speciesId',
      label: label('fields.speciesId'),
      options: namedOptions(choices.species, language),
    },
    {
      kind: 'select',
      name: 'containerKind',
      label: label('fields.containerKind'),
      options: trialContainers.map((value) => ({ value, label: words(`containerKind.${value}`) })),
    },
    {
      kind: 'group',
      name: 'arms',
      legend: t('groups.arms'),
      hint: t('groups.armsHint'),
      fields: Array.from({ length: mostArms }, (_, index) => arm(index)).flat(),
    },
    {
      kind: 'several',
      name: 'siteIds',
      label: label('fields.siteIds'),
      hint: t('hints.siteIds'),
      options: sites.map(({ id, name }) => ({ value: id, label: name })),
    },
    {
      kind: 'group',
      name: 'size',
      legend: t('groups.size'),
      fields: [
        {
          kind: 'whole',
          name: 'unitsPerRun',
          label: label('fields.unitsPerRun'),
          hint: t('hints.unitsPerRun'),
        },
        {
          kind: 'decimal',
          name: 'expectedPercent',
          label: label('fields.expectedPercent'),
          hint: t('hints.expectedPercent'),
          suffix: '%',
        },
        {
          kind: 'decimal',
          name: 'differencePoints',
          label: label('fields.differencePoints'),
          hint: t('hints.differencePoints'),
          suffix: points,
        },
        {
          kind: 'decimal',
          name: 'likeness',
          label: label('fields.likeness'),
          hint: t('hints.likeness'),
          optional: true,
        },
        {
          kind: 'decimal',
          name: 'runSpreadPoints',
          label: label('fields.runSpreadPoints'),
          hint: t('hints.runSpreadPoints'),
          suffix: points,
          optional: true,
        },
        {
          kind: 'whole',
          name: 'powerPercent',
          label: label('fields.powerPercent'),
          hint: t('hints.powerPercent'),
          suffix: '%',
        },
        {
          kind: 'whole',
          name: 'blocks',
          label: label('fields.blocks'),
          hint: t('hints.blocks'),
          optional: true,
        },
      ],
    },
    {
      kind: 'group',
      name: 'days',
      legend: t('groups.days'),
      fields: [
        { kind: 'date', name: 'startsOn', label: label('fields.startsOn'), quick: [] },
        {
          kind: 'whole',
          name: 'daysBetweenBlocks',
          label: label('fields.daysBetweenBlocks'),
          suffix: t('days'),
        },
        { kind: 'whole', name: 'lateAfterDays', label: label('fields.lateAfterDays'), suffix: t('days') },
      ],
    },
  ];
}
