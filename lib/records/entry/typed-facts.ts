import 'server-only';
import type { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { readerLocale } from '@/lib/base/reader-locale';
import { recordCheckInput } from '../check/check.input';
import { recordFindingInput } from '../finding/finding.input';
import { recordLookInput } from '../look/record-look.input';
import { recordLossInput } from '../loss/loss.input';
import { addReadingInput } from '../treatment/treatment.input';
import { recordWeighingInput } from '../weighing/weighing.input';
import {
  countFact,
  dateFact,
  type Facts,
  type FactValue,
  massFact,
  textFact,
  unitNumbersFact,
} from './entry-fact';

type Typed = Readonly<Record<string, unknown>>;
type Read = (context: ReadContext, typed: Typed) => Promise<Facts> | Facts;

/** Reads what was typed by the rules of the form; what cannot be read says nothing. */
function reading<S extends z.ZodType>(
  schema: S,
  facts: (input: z.output<S>, context: ReadContext) => Promise<Facts> | Facts,
): Read {
  return (context, typed) => {
    const parsed = parseInput(schema, typed, readerLocale(context.actor));
    return parsed.kind === 'ok' ? facts(parsed.value, context) : new Map();
  };
}

async function weighed(input: z.output<typeof recordWeighingInput>, { db }: ReadContext): Promise<Facts> {
  const batches = await db.batch.findMany({
    where: { id: { in: input.lines.map(({ batchId }) => batchId) } },
    select: { id: true, code: true },
  });
  const codeOf = (id: string) => textFact(batches.find((batch) => batch.id === id)?.code ?? null);
  const trim: [string, FactValue][] =
    input.trimState === null
      ? []
      : [['trimState', { kind: 'word', group: 'trimState', word: input.trimState }]];
  return new Map<string, FactValue | null>([
    ['weighedOn', dateFact(input.weighedOn)],
    ['fresh', massFact(input.fresh.grams)],
    ...input.lines.flatMap(({ batchId, flush, fresh }, index): [string, FactValue | null][] => [
      [`lines.${index}.batchId`, codeOf(batchId)],
      ...(flush === null
        ? []
        : ([[`lines.${index}.flush`, countFact(flush)]] as [string, FactValue | null][])),
      ...(fresh === null || input.lines.length === 1
        ? []
        : ([[`lines.${index}.fresh`, massFact(fresh)]] as [string, FactValue | null][])),
    ]),
    ...trim,
    ['sold', massFact(input.sold)],
    ['given', massFact(input.given)],
    ['kept', massFact(input.kept)],
    ['discarded', massFact(input.discarded)],
    ['grade', textFact(input.grade)],
    ['note', textFact(input.note)],
  ]);
}

/** What an entry says, by its kind; fields that it leaves to the server are not in it. */
export const typedFacts: Readonly<
  Record<'weighing' | 'finding' | 'loss' | 'check' | 'look' | 'reading', Read>
> = {
  weighing: reading(recordWeighingInput, weighed),
  finding: reading(
    recordFindingInput,
    (input) =>
      new Map([
        ['foundOn', dateFact(input.foundOn)],
        ['units', countFact(input.units)],
        ['sign', { kind: 'word', group: 'contaminationSign', word: input.sign }],
        ['stage', { kind: 'word', group: 'cropStage', word: input.stage }],
        ['action', { kind: 'word', group: 'findingAction', word: input.action }],
        ['unitNumbers', unitNumbersFact(input.unitNumbers)],
        ['note', textFact(input.note)],
      ]),
  ),
  loss: reading(
    recordLossInput,
    (input) =>
      new Map([
        ['lostOn', dateFact(input.lostOn)],
        ['units', countFact(input.units)],
        ['contaminatedUnits', countFact(input.contaminatedUnits ?? 0)],
        ['cause', { kind: 'word', group: 'lossCause', word: input.cause }],
        ['unitNumbers', unitNumbersFact(input.unitNumbers)],
        ['note', textFact(input.note)],
      ]),
  ),
  check: reading(
    recordCheckInput,
    (input) =>
      new Map([
        ['kind', { kind: 'word', group: 'checkKind', word: input.kind }],
        ['checkedOn', dateFact(input.checkedOn)],
        ['note', textFact(input.note)],
      ]),
  ),
  look: reading(
    recordLookInput,
    (input) =>
      new Map([
        ['lookedOn', dateFact(input.lookedOn)],
        ['note', textFact(input.note)],
      ]),
  ),
  reading: reading(
    addReadingInput,
    (input) =>
      new Map([
        ['celsius', textFact(input.celsius === null ? null : `${input.celsius} °C`)],
        ['ph', textFact(input.ph === null ? null : String(input.ph))],
      ]),
  ),
};
