import 'server-only';
import type { z } from 'zod';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import { invalid, ok, type Result } from '@/lib/base/result';
import { insertCoded } from '../fields/insert-coded';
import { lotCodes } from '../fields/lot-code';
import { type Coded, madeBefore } from '../fields/made-before';
import type { ReadingColumns, ReadRunOf } from './judge-reading';
import { judgeTreatment, runLookups } from './prepare-treatment';
import type { startTreatmentInput } from './treatment.input';

type Input = z.output<typeof startTreatmentInput>;

export type AskedRun = {
  readonly input: Input;
  /** Readings that were taken of it, judged once the run is; a refusal of one refuses the run. */
  readonly readings?: (run: ReadRunOf) => Result<readonly ReadingColumns[]>;
};

/** Codes of runs that the actor can see; those of other sites show when the run is inserted. */
async function codesInUse({ db }: ReadContext, inputs: readonly Input[]): Promise<Set<string>> {
  const wanted = inputs.flatMap(({ code }) => code ?? []);
  if (wanted.length === 0) return new Set();
  const rows = await db.treatmentRun.findMany({
    where: { code: { in: wanted } },
    select: { code: true },
  });
  return new Set(rows.map(({ code }) => code));
}

/**
 * Starts several runs, or records some that are over, as the form does one: each is refused, asked about or started for
 * itself, in the order given, in a number of statements that does not grow with theirs.
 */
export async function startTreatments(
  context: WriteContext,
  asked: readonly AskedRun[],
): Promise<Result<Coded>[]> {
  const { actor, origin } = context;
  const inputs = asked.map(({ input }) => input);
  const before = await madeBefore(context, 'treatment_run', inputs);
  const found = await runLookups(context, inputs);
  const gone = await codesInUse(context, inputs);
  const own = { networkId: actor.networkId, origin, createdById: actor.personId };

  function judge({ input, readings }: AskedRun) {
    const columns = judgeTreatment(context, input, found);
    if (columns.kind !== 'ok') return columns;
    if (input.code !== null && gone.has(input.code))
      return invalid('code', 'code-taken', { code: input.code });
    const { siteId, methodId, startedAt } = columns.value;
    const [site, method] = [found.sites.get(siteId), found.methods.get(methodId)];
    const taken = site && method && readings?.({ startedAt, site, method });
    if (taken !== undefined && taken.kind !== 'ok') return taken;
    if (input.code !== null) gone.add(input.code);
    return ok({ columns: columns.value, readings: taken?.value ?? [] });
  }

  const answers: Result<Coded>[] = [];
  const ready = asked.flatMap((one, at) => {
    const repeat = one.input.id === null ? undefined : before.get(one.input.id);
    const judged = repeat ? undefined : judge(one);
    if (repeat) answers[at] = ok(repeat);
    else if (judged && judged.kind !== 'ok') answers[at] = judged;
    if (judged?.kind !== 'ok') return [];
    const id = one.input.id ?? newId();
    const row = (code: string) => ({ ...own, id, code, ...judged.value.columns });
    return [{ at, id, wanted: one.input.code, row, ...judged.value }];
  });
  const made = await insertCoded(context, 'treatment_run', ready, lotCodes('T'));
  await insertRows(
    context,
    'treatment_reading',
    ready.flatMap(({ id, columns: { siteId }, readings }, index) =>
      made[index]?.kind === 'ok'
        ? readings.map((one) => ({ ...own, id: newId(), treatmentRunId: id, siteId, ...one }))
        : [],
    ),
  );
  for (const [index, { at }] of ready.entries()) {
    const answer = made[index];
    if (answer) answers[at] = answer;
  }
  return answers;
}
