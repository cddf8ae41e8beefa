import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { freeCodes } from '../fields/free-codes';
import { judgeSubstrateLot, materialsOf } from './prepare-substrate-lot';
import type { addSubstrateLotInput } from './substrate-lot.input';

type Input = z.output<typeof addSubstrateLotInput>;
type Added = { readonly id: string; readonly code: string };

/** Those of the ids under which the actor has added a lot before, with its code. */
async function addedBefore(
  { db, actor }: WriteContext,
  ids: readonly string[],
): Promise<ReadonlyMap<string, Added>> {
  if (ids.length === 0) return new Map();
  const rows = await db.substrateLot.findMany({
    where: { id: { in: [...ids] }, createdById: actor.personId },
    select: { id: true, code: true },
  });
  return new Map(rows.map((row) => [row.id, row]));
}

/**
 * Adds several lots, as the form adds one: each is refused or added for itself, in the order given, in a number of
 * statements that does not grow with theirs.
 */
export async function addSubstrateLots(
  context: WriteContext,
  inputs: readonly Input[],
): Promise<Result<Added>[]> {
  const { db, actor, origin } = context;
  if (actor.role === 'funder') return inputs.map(() => notFound);
  const before = await addedBefore(
    context,
    inputs.flatMap(({ id }) => id ?? []),
  );
  const materials = await materialsOf(context, inputs);
  const answers: Result<Added>[] = [];
  const ready = inputs.flatMap((input, at) => {
    const repeat = input.id === null ? undefined : before.get(input.id);
    const id = input.id ?? newId();
    const judged = judgeSubstrateLot(context, input, materials.get(input.materialId));
    if (repeat) answers[at] = ok(repeat);
    else if (judged.kind !== 'ok') answers[at] = judged;
    return !repeat && judged.kind === 'ok' ? [{ at, id, code: input.code, columns: judged.value }] : [];
  });
  const codes = await freeCodes(ready, 'M', async (some) => {
    const rows = await db.substrateLot.findMany({
      where: { code: { in: [...some] } },
      select: { code: true },
    });
    return new Set(rows.map(({ code }) => code));
  });
  const rows = ready.flatMap(({ at, id, columns }, index) => {
    const code = codes[index];
    if (code?.kind === 'ok') answers[at] = ok({ id, code: code.value });
    else if (code) answers[at] = code;
    return code?.kind === 'ok' ? [{ id, code: code.value, ...columns }] : [];
  });
  await insertRows(
    context,
    'substrate_lot',
    rows.map((row) => ({
      networkId: actor.networkId,
      ...row,
      ...{ origin, createdById: actor.personId },
    })),
  );
  return answers;
}
