import type { Failure } from '@/lib/base/result';
import type { EntryAnswer } from '@/lib/offline/entry';
import type { EntryComparison } from '@/lib/records/entry/compare-entry.query';
import type { EntryKind } from '@/lib/records/entry/entry.input';
import { labelOf, type ProblemReader, problemText } from '../form/problem-text';
import { sentenceCase } from '../format/sentence-case';
import { factText } from './fact-text';

/** Whose words name the fields of an entry: the area of the form that asks for the same. */
const areas: Readonly<Record<EntryKind, string>> = {
  weighing: 'weighings',
  finding: 'findings',
  check: 'findings',
  look: 'findings',
  loss: 'findings',
  reading: 'treatments',
  undo: 'common',
};

type Unsaved = Exclude<EntryAnswer, { kind: 'saved' }>;

/** What a refused entry is answered, in the reader's words; `kind` is undefined where the entry could not be read. */
export function entryAnswer(
  reader: ProblemReader,
  kind: EntryKind | undefined,
  failure: Exclude<Failure, { kind: 'conflict' }>,
): Unsaved {
  const text = problemText(reader, kind === undefined ? 'common' : areas[kind]);
  switch (failure.kind) {
    case 'invalid':
      return {
        kind: 'refused',
        errors: failure.errors.map((error) => ({ field: error.field, text: text('errors', error) })),
      };
    case 'confirm':
      return {
        kind: 'asked',
        questions: failure.questions.map((question) => ({
          code: question.code,
          text: text('questions', question),
        })),
      };
    case 'not-found':
      return {
        kind: 'refused',
        errors: [{ field: '', text: text('errors', { field: '', code: 'entry-not-there' }) }],
      };
  }
}

/** Both versions of a record, where they differ. */
export function conflictAnswer(
  reader: ProblemReader,
  kind: EntryKind,
  { revision, changedBy, changedAt, fields }: EntryComparison,
): Unsaved {
  return {
    ...{ kind: 'conflict', revision, changedBy, changedAt },
    fields: fields.map(({ field, theirs, yours }) => ({
      label: sentenceCase(labelOf(reader.words, areas[kind], field)),
      theirs: factText(theirs, reader),
      yours: factText(yours, reader),
    })),
  };
}
