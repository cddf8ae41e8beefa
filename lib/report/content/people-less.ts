import type { BuiltReport } from './build-content';
import { fewestHidden } from './fewest-hidden';
import { trainingHeads } from './trainings-tell';

/** Whether a version of a report tells of no few sites or people beside those that readers have. */
export type Safe = (version: BuiltReport) => boolean;

const nothing = { kind: 'protected' } as const;
const named = (keys: readonly string[]) => keys.map((key) => ({ key, amount: 0 }));

/** A report with as few of the numbers about its trainings kept back as is safe. */
export function trainingsLess({ content, ground }: BuiltReport, safe: Safe): BuiltReport | undefined {
  const { trainings } = content;
  if (!trainings) return undefined;
  const answerKey = (at: number) => `answers ${at}`;
  const hide = (keys: ReadonlySet<string>): BuiltReport => ({
    content: {
      ...content,
      trainings: {
        ...trainings,
        ...Object.fromEntries(trainingHeads.filter((key) => keys.has(key)).map((key) => [key, nothing])),
        answers: trainings.answers.map((row, at) =>
          keys.has(answerKey(at)) ? { ...row, answers: nothing } : row,
        ),
      },
    },
    ground,
  });
  return fewestHidden(
    named([...trainingHeads, ...trainings.answers.map((_row, at) => answerKey(at))]),
    hide,
    safe,
  );
}

/** A report without the number of people, or of batches begun, or without both. */
export function glanceLess({ content, ground }: BuiltReport, safe: Safe): BuiltReport | undefined {
  const hide = (keys: ReadonlySet<string>): BuiltReport => ({
    content: {
      ...content,
      peopleActive: keys.has('people') ? nothing : content.peopleActive,
      batchesStarted: keys.has('batches') ? { key: 'total', ...nothing } : content.batchesStarted,
    },
    ground: keys.has('batches') ? { ...ground, glance: {} } : ground,
  });
  return fewestHidden(named(['people', 'batches']), hide, safe);
}
