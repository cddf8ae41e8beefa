import 'server-only';
import type { OneOfMany } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { ReadyBatch } from '@/lib/records/batch/insert-started';
import type { PreparedBatch } from '@/lib/records/batch/prepare-batch';
import type { ReadyFinding } from '@/lib/records/finding/insert-findings';
import { afterFinding } from '@/lib/records/finding/judge-finding';
import { afterWeighing } from '@/lib/records/weighing/after-weighing';
import type { ReadyWeighing } from '@/lib/records/weighing/insert-weighings';
import type { WeighedBatch } from '@/lib/records/weighing/weighed-batches';
import type { KnownKeys } from '../known-keys';
import { problemsOf, type RowToTake, type TakenRow } from '../taker';
import {
  type BatchFacts,
  type KnownBatch,
  keepFacts,
  type NotebookFacts,
  startedFacts,
} from './notebook-facts';
import { lineHarvests, saysFinding } from './notebook-line';
import {
  findingPart,
  harvestPart,
  type Judging,
  type Part,
  type StartInput,
  startPart,
} from './notebook-parts';
import { otherBatch } from './other-batch';

/** A line with its code, and the batch that it would start where there is none. */
export type NotebookLine = {
  readonly row: RowToTake;
  readonly code: string;
  /** How many lines name the batch. */
  readonly lines: number;
  /** Undefined where the batch was there before these lines. */
  readonly start: Result<StartInput> | undefined;
};

/** What lines become, in the order in which it is written, and what they found there. */
export type NotebookPlan = {
  readonly starts: (ReadyBatch & { readonly named: KnownBatch })[];
  readonly weighings: ReadyWeighing[];
  readonly findings: ReadyFinding[];
  readonly giveBack: (() => void)[];
};

type Means = Judging & {
  readonly siteId: string | null;
  readonly facts: NotebookFacts;
  readonly harvests: KnownKeys;
  readonly findings: KnownKeys;
  /** The batch of a code: null where it names two, undefined where there is none yet. */
  readonly find: (code: string) => string | null | undefined;
  readonly judgeStart: (one: OneOfMany<StartInput>) => Result<PreparedBatch>;
};

type Batch = { readonly facts: BatchFacts; readonly made?: NotebookPlan['starts'][number] };

function batchOf({ row, code, lines, start }: NotebookLine, means: Means): Result<Batch> {
  const { facts, siteId } = means;
  const known = means.find(code);
  if (known === null) return invalid('code', 'intake-two-codes', { text: code });
  const named = known === undefined ? undefined : facts.named.get(known);
  if (named) {
    const errors = otherBatch(row.values, siteId, named);
    const { id } = named;
    return errors.length > 0
      ? { kind: 'invalid', errors }
      : ok({ facts: { named, weighed: facts.weighed.get(id), found: facts.found.get(id) } });
  }
  if (start?.kind !== 'ok') return start ?? notFound;
  const made = startPart(row, start.value, lines, means.judgeStart);
  return made.kind === 'ok'
    ? ok({ facts: startedFacts(made.value, made.value.named), made: made.value })
    : made;
}

type Harvested = {
  readonly parts: readonly Part<ReadyWeighing>[];
  readonly weighed: WeighedBatch | undefined;
};

/** All harvests of a line, each judged by what those before it left; where one is refused, none is taken. */
function harvestParts(row: RowToTake, facts: BatchFacts, means: Means): Result<Harvested> {
  const parts: Part<ReadyWeighing>[] = [];
  let { weighed } = facts;
  for (const harvest of lineHarvests(row.values)) {
    const part = harvestPart(means, row.confirmed, harvest, { ...facts, weighed }, means.harvests);
    if (part.kind !== 'ok') {
      for (const { giveBack } of parts.reverse()) giveBack?.();
      return part;
    }
    parts.push(part.value);
    if (part.value.made) weighed = weighed && afterWeighing(weighed, part.value.made.prepared);
  }
  return ok({ parts, weighed });
}

/** Judges one line by what those before it left, and adds what it becomes to the plan; asks the database nothing. */
export function judgeLine(line: NotebookLine, means: Means, plan: NotebookPlan): TakenRow {
  const { row } = line;
  const batch = batchOf(line, means);
  if (batch.kind !== 'ok') return { kind: 'needs', problems: problemsOf(batch) };
  const { facts, made } = batch.value;
  const harvested = harvestParts(row, facts, means);
  if (harvested.kind !== 'ok') return { kind: 'needs', problems: problemsOf(harvested) };
  const { parts: harvests, weighed } = harvested.value;
  const finding = saysFinding(row.values) ? findingPart(means, row, facts, means.findings) : undefined;
  if (finding && finding.kind !== 'ok') {
    for (const part of [...harvests].reverse()) part.giveBack?.();
    return { kind: 'needs', problems: problemsOf(finding) };
  }
  if (made) plan.starts.push(made);
  plan.weighings.push(...harvests.flatMap((part) => part.made ?? []));
  let { found } = facts;
  if (finding?.value.made) {
    plan.findings.push(finding.value.made);
    found = found && afterFinding(found, finding.value.made.input);
  }
  keepFacts(means.facts, { named: facts.named, weighed, found });
  const parts: Part<unknown>[] = [...harvests, ...(finding ? [finding.value] : [])];
  plan.giveBack.push(...parts.flatMap(({ giveBack }) => giveBack ?? []));
  const isNew = made !== undefined || parts.some((part) => part.made !== undefined);
  // Parts that were there count as well: this row stands for them.
  return { kind: isNew ? 'new' : 'there', recordIds: [facts.named.id, ...parts.map(({ id }) => id)] };
}
