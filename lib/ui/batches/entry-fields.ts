import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { contaminationSigns } from '@/lib/growing/contamination-signs';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { findingActions, lossCauseKinds } from '@/lib/growing/vocabulary';
import { checkKinds } from '@/lib/records/check/check.input';
import { cropStages } from '@/lib/records/finding/finding.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

type Ask = {
  readonly kind: 'look' | 'finding' | 'follow-up' | 'loss' | 'check';
  readonly days: readonly ChoiceOption[];
  readonly language: Language;
  /** A bed is one unit, so it is asked neither how many nor which. */
  readonly container: ContainerKind;
};

/** The fields of one entry about a batch; a new one adds its hidden ids, a correction its reason. */
export async function entryFields({ kind, days, language, container }: Ask): Promise<FieldSpec[]> {
  const t = await getTranslations('findings');
  const words = await getTranslations('vocabulary');
  const common = await getTranslations('common');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const day = (name: 'lookedOn' | 'foundOn' | 'doneOn' | 'lostOn' | 'checkedOn'): FieldSpec => ({
    kind: 'date',
    name,
    label: label(`fields.${name}`),
    quick: days,
  });
  const note: FieldSpec = { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true };
  const isBed = container === 'bed';
  const batches = await getTranslations('batches.unitCount');
  const units: FieldSpec = isBed
    ? { kind: 'hidden', name: 'units' }
    : { kind: 'whole', name: 'units', label: batches(container) };
  const action: FieldSpec = {
    kind: 'radio',
    name: 'action',
    label: label('fields.action'),
    options: findingActions.map((value) => ({ value, label: words(`findingAction.${value}`) })),
  };
  const caution: FieldSpec = {
    kind: 'caution',
    name: 'care',
    title: t('caution.title'),
    lines: [t('caution.keepClosed'), t('caution.lastInLine'), t('caution.doNotEat'), common('caution.rule')],
  };
  const named: FieldSpec = {
    kind: 'group',
    name: 'named',
    legend: t('finding.more'),
    folded: true,
    fields: [
      ...(isBed
        ? []
        : ([
            {
              kind: 'text',
              name: 'unitNumbers',
              label: label('fields.unitNumbers'),
              hint: t('hints.unitNumbers'),
              width: 'short',
              optional: true,
            },
          ] satisfies FieldSpec[])),
      note,
    ],
  };
  switch (kind) {
    case 'look':
      return [day('lookedOn'), note];
    case 'finding':
      return [
        units,
        {
          kind: 'radio',
          name: 'sign',
          label: label('fields.sign'),
          options: contaminationSigns.map(({ sign, looksLike }) => {
            const group = looksLike
              .map(({ name, genera }) => `${name[language].toLocaleLowerCase()} (${genera.join(', ')})`)
              .join(t('finding.or'));
            return {
              value: sign,
              label: words(`contaminationSign.${sign}`),
              ...(group === '' ? {} : { hint: t('finding.looksLike', { group }) }),
            };
          }),
        },
        action,
        day('foundOn'),
        {
          kind: 'radio',
          name: 'stage',
          label: label('fields.stage'),
          options: cropStages.map((value) => ({ value, label: words(`cropStage.${value}`) })),
        },
        named,
        caution,
      ];
    case 'follow-up':
      return [units, action, day('doneOn'), note, caution];
    case 'loss':
      return [
        units,
        {
          kind: 'radio',
          name: 'cause',
          label: label('fields.cause'),
          options: lossCauseKinds.map((value) => ({ value, label: words(`lossCause.${value}`) })),
        },
        day('lostOn'),
        {
          kind: 'whole',
          name: 'contaminatedUnits',
          label: label('fields.contaminatedUnits'),
          hint: t('hints.contaminatedUnits'),
          optional: true,
        },
        named,
      ];
    case 'check':
      return [
        {
          kind: 'radio',
          name: 'kind',
          label: label('fields.kind'),
          options: checkKinds.map((value) => ({ value, label: words(`checkKind.${value}`) })),
        },
        day('checkedOn'),
        note,
      ];
  }
}
