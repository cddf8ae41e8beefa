import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import type { Command } from '@/lib/access/run-command';
import { readerLocale } from '@/lib/base/reader-locale';
import type { Result } from '@/lib/base/result';
import { correctCheckInput, recordCheckInput } from '../check/check.input';
import { correctCheck } from '../check/correct-check.command';
import { recordCheck } from '../check/record-check.command';
import { correctFinding } from '../finding/correct-finding.command';
import { correctFindingInput, recordFindingInput } from '../finding/finding.input';
import { recordFinding } from '../finding/record-finding.command';
import { correctLook } from '../look/correct-look.command';
import { correctLookInput } from '../look/correct-look.input';
import { recordLook } from '../look/record-look.command';
import { recordLookInput } from '../look/record-look.input';
import { correctLoss } from '../loss/correct-loss.command';
import { correctLossInput, recordLossInput } from '../loss/loss.input';
import { recordLoss } from '../loss/record-loss.command';
import { addReading } from '../treatment/add-reading.command';
import { addReadingInput } from '../treatment/treatment.input';
import type { VoidableKind } from '../void/void-record.input';
import { correctWeighing } from '../weighing/correct-weighing.command';
import { recordWeighing } from '../weighing/record-weighing.command';
import { correctWeighingInput, recordWeighingInput } from '../weighing/weighing.input';
import type { EntryKind } from './entry.input';

export type RecordKind = Exclude<EntryKind, 'undo'>;
type Step = (context: WriteContext, raw: unknown) => Promise<Result<{ readonly id: string }>>;

function step<S extends z.ZodType>(schema: S, command: Command<z.output<S>, { readonly id: string }>): Step {
  return async (context, raw) => {
    const input = parseInput(schema, raw, readerLocale(context.actor));
    return input.kind === 'ok' ? command(context, input.value) : input;
  };
}

type Steps = {
  readonly table: VoidableKind;
  readonly record: Step;
  /** Undefined: records of this kind are voided and written anew. */
  readonly correct?: Step;
};

/** The commands behind each kind of entry, the same that the forms run. */
export const entryCommands: Readonly<Record<RecordKind, Steps>> = {
  weighing: {
    table: 'weighing',
    record: step(recordWeighingInput, recordWeighing),
    correct: step(correctWeighingInput, correctWeighing),
  },
  finding: {
    table: 'finding',
    record: step(recordFindingInput, recordFinding),
    correct: step(correctFindingInput, correctFinding),
  },
  check: {
    table: 'check',
    record: step(recordCheckInput, recordCheck),
    correct: step(correctCheckInput, correctCheck),
  },
  look: {
    table: 'look',
    record: step(recordLookInput, recordLook),
    correct: step(correctLookInput, correctLook),
  },
  loss: {
    table: 'loss',
    record: step(recordLossInput, recordLoss),
    correct: step(correctLossInput, correctLoss),
  },
  reading: { table: 'treatment-reading', record: step(addReadingInput, addReading) },
};
