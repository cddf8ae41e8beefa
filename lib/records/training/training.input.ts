import { z } from 'zod';
import { tallyAnswers } from '@/lib/growing/answer-tally';
import { trainingTopics } from '@/lib/growing/programme-vocabulary';
import { choiceField, optionalChoiceField } from '../fields/choice-field';
import { countField, optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, idListField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalTextField, textField } from '../fields/text-field';

export const mostQuestions = 8;
const longestAnswers = 1500;

/** A question asked before and after (one without an answer is dropped): answers as typed one after the other, each from 1 to the end of the scale. */
const question = z
  .object({
    wording: textField(200),
    scaleMost: countField({ least: 2, most: 10 }),
    leastLabel: optionalTextField(40),
    mostLabel: optionalTextField(40),
    before: optionalTextField(longestAnswers),
    after: optionalTextField(longestAnswers),
  })
  .transform((row, context) => {
    const counted = (field: 'before' | 'after'): number[] => {
      const tally = tallyAnswers(row[field] ?? '', row.scaleMost);
      if (tally.kind === 'tally') return [...tally.counts];
      context.addIssue({
        code: 'custom',
        path: [field],
        message: tally.kind === 'unreadable' ? 'answers-unreadable' : 'answer-outside-scale',
        params: { most: row.scaleMost, answer: tally.kind === 'unreadable' ? 0 : tally.answer },
      });
      return [];
    };
    const { wording, scaleMost, leastLabel, mostLabel } = row;
    return {
      ...{ wording, scaleMost, leastLabel, mostLabel },
      beforeCounts: counted('before'),
      afterCounts: counted('after'),
    };
  });

const training = {
  heldOn: dateField,
  title: textField(200),
  topic: choiceField(trainingTopics),
  place: optionalTextField(200),
  minutes: optionalCountField({ most: 10_000 }),
  /** Everybody in the room, named or not. */
  headCount: optionalCountField({ most: 10_000 }),
  participants: idListField,
  /** People not yet known, one name a line. */
  newNames: optionalTextField(4000),
  /** Whether those new people agreed to be counted in reports, on that day. */
  newCounted: optionalChoiceField(['yes', 'no']),
  questions: rowsField(question, mostQuestions, (row) => isBlank(row.before) && isBlank(row.after)),
  note: optionalTextField(),
};

export const recordTrainingInput = z.object({ id: optionalIdField, siteId: idField, ...training });

export const correctTrainingInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...training,
});
