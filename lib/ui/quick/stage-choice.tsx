import type { OpenBatch } from '@/lib/growing/open-batch';
import { type FieldContext, textOf } from '../form/field-context';
import { ChoiceField } from '../form/fields/choice-field';
import type { QuickWords } from './quick-words';

const stages = ['colonising', 'cropping'] as const;

type Props = {
  readonly batch: OpenBatch | undefined;
  readonly words: QuickWords;
  readonly context: FieldContext;
};

/** The stage of a batch by what is written down about it; undefined while no batch is chosen. */
export function proposedStage(batch: OpenBatch | undefined): (typeof stages)[number] | undefined {
  if (batch === undefined) return undefined;
  const begun = batch.colonised || batch.pinsSeen || batch.lastPickedOn !== null;
  return begun ? 'cropping' : 'colonising';
}

/** When it was seen: proposed, to be changed by one tap. */
export function StageChoice({ batch, words, context }: Props) {
  const values = { ...context.values, stage: textOf(context, 'stage') || (proposedStage(batch) ?? '') };
  return (
    <ChoiceField
      spec={{
        kind: 'radio',
        name: 'stage',
        label: words.fields.stage,
        options: stages.map((value) => ({ value, label: words.stage[value] })),
      }}
      context={{ ...context, values }}
    />
  );
}
