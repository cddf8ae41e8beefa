import type { ShedBatch } from '@/lib/offline/shed-snapshot';
import { type FieldContext, textOf } from '../form/field-context';
import { ChoiceField } from '../form/fields/choice-field';
import type { QuickWords } from './quick-words';

const stages = ['colonising', 'cropping'] as const;

type Props = {
  readonly batch: ShedBatch | undefined;
  readonly words: QuickWords;
  readonly context: FieldContext;
};

/** When it was seen: proposed from what is written down about the batch. */
export function StageChoice({ batch, words, context }: Props) {
  const begun = batch && (batch.colonised || batch.pinsSeen || batch.lastPickedOn !== null);
  const proposed = batch === undefined ? '' : begun ? 'cropping' : 'colonising';
  const values = { ...context.values, stage: textOf(context, 'stage') || proposed };
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
