import { tallyText } from '@/lib/growing/answer-tally';
import type { TrainingView } from '@/lib/records/training/training-view';
import { dateValues } from '../form/date-values';
import type { FormState } from '../form/field-spec';

type Question = Pick<TrainingView['questions'][number], 'wording' | 'scaleMost' | 'leastLabel' | 'mostLabel'>;

/** The questions of an earlier training, to be asked again. */
export function questionValues(questions: readonly Question[]): Record<string, string> {
  return Object.fromEntries(
    questions.flatMap((question, row) =>
      Object.entries({
        wording: question.wording,
        scaleMost: String(question.scaleMost),
        leastLabel: question.leastLabel ?? '',
        mostLabel: question.mostLabel ?? '',
      }).map(([field, value]) => [`questions.${row}.${field}`, value] as const),
    ),
  );
}

/** What the form of a correction starts from. */
export function trainingValues(training: TrainingView): FormState['values'] {
  const text = (value: number | string | null) => (value === null ? '' : String(value));
  const answers = Object.fromEntries(
    training.questions.flatMap(({ before, after }, row) => [
      [`questions.${row}.before`, tallyText(before)] as const,
      [`questions.${row}.after`, tallyText(after)] as const,
    ]),
  );
  return {
    id: training.id,
    revision: String(training.revision),
    title: training.title,
    topic: training.topic,
    headCount: text(training.headCount),
    place: text(training.place),
    minutes: text(training.minutes),
    note: text(training.note),
    participants: training.people.map(({ id }) => id),
    ...dateValues('heldOn', training.heldOn),
    ...questionValues(training.questions),
    ...answers,
  };
}
