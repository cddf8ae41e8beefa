import { todayInZone } from '@/lib/growing/calendar-date';
import { type CheckEntry, checkBatchAndDay, dayText, problem } from './checked-entry';
import { fillPlaces } from './fill-places';
import { type TypedEntry, textAt } from './typed-entry';

/** What a check can say; `all_clean` is recorded as a look. */
export const quickCheckKinds = ['fully_colonised', 'pins_seen', 'all_clean'] as const;
export type QuickCheckKind = (typeof quickCheckKinds)[number];

export function checkKindAt(typed: TypedEntry): QuickCheckKind | undefined {
  return quickCheckKinds.find((one) => one === textAt(typed, 'kind'));
}

/** Reads a check as typed: batch, what was seen, day. */
export const checkCheck: CheckEntry = (typed, context) => {
  const { words } = context;
  const { batch, day, problems } = checkBatchAndDay(typed, context, { batch: 'batchId', day: 'checkedOn' });
  const kind = checkKindAt(typed);
  if (!kind) problems.push(problem(words, 'kind', 'missing-choice'));
  if (problems.length > 0 || !batch || !kind) return { kind: 'wrong', problems };
  const look = kind === 'all_clean';
  return {
    kind: 'ready',
    batch,
    after: {
      ...batch,
      colonised: batch.colonised || kind === 'fully_colonised',
      pinsSeen: batch.pinsSeen || kind === 'pins_seen',
    },
    entryKind: look ? 'look' : 'check',
    input: look ? { batchId: batch.id, lookedOn: day } : { batchId: batch.id, checkedOn: day, kind },
    summary: fillPlaces(words.check.saved, {
      code: batch.code,
      what: look ? words.check.allClean : words.checkKind[kind],
      day: dayText(day, todayInZone(batch.timeZone, context.now), words),
    }),
  };
};
