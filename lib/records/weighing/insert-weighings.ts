import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import type { PreparedWeighing } from './prepare-weighing';
import { addWeighingChildren } from './weighing-children';

type Typed = { readonly text: string; readonly unit: string };
type Scale = { readonly fresh: { readonly entered: Typed | null }; readonly tare?: Typed | null };

/** A weighing that was checked. */
export type ReadyWeighing = {
  readonly id: string;
  readonly input: Scale;
  readonly prepared: PreparedWeighing;
};

/** Inserts weighings that were checked, with their lines: three statements, however many they are. */
export async function insertWeighings(
  context: WriteContext,
  weighings: readonly ReadyWeighing[],
): Promise<void> {
  const { actor, origin } = context;
  await insertRows(
    context,
    'weighing',
    weighings.map(({ id, input, prepared: { siteId, row } }) => ({
      networkId: actor.networkId,
      ...{ id, siteId, ...row, ...enteredOf(input), origin },
      createdById: actor.personId,
    })),
  );
  await addWeighingChildren(
    context,
    weighings.map(({ id, prepared }) => ({ weighingId: id, prepared })),
  );
}

/** What was typed on the scale's form, kept beside the grams it was read as. */
export function enteredOf({ fresh, tare }: Scale) {
  if (fresh.entered === null) return {};
  return { entered: tare ? { fresh: fresh.entered, tare } : { fresh: fresh.entered } };
}
