import { daysBetween } from '@/lib/growing/calendar-date';
import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedDue } from '@/lib/offline/shed-snapshot';

export type QuickKind = 'harvest' | 'contamination' | 'check';

// Common practice: within one to three weeks the next flush follows, so the same batch is likely to be picked again.
const latelyDays = 21;

/** The higher, the likelier this batch is meant; equal ones go by date. */
function likelihood(batch: OpenBatch, kind: QuickKind, due: readonly ShedDue[], today: string): number {
  if (due.some(({ href }) => href.includes(`/quick/${kind}`) && href.includes(batch.id))) return 4;
  if (due.some(({ href }) => href.includes(batch.id))) return 3;
  const lately = batch.lastPickedOn !== null && daysBetween(batch.lastPickedOn, today) <= latelyDays;
  if (kind === 'harvest') return lately ? 2 : batch.pinsSeen ? 1 : 0;
  const begun = batch.colonised || batch.pinsSeen || batch.lastPickedOn !== null;
  return begun ? 0 : 1;
}

/** Open batches, those likeliest meant first: what is due, what was lately picked, then the latest. */
export function likelyBatches(
  batches: readonly OpenBatch[],
  kind: QuickKind,
  due: readonly ShedDue[],
  today: string,
): readonly OpenBatch[] {
  const day = (batch: OpenBatch) =>
    kind === 'harvest' ? (batch.lastPickedOn ?? batch.inoculatedOn) : batch.inoculatedOn;
  return batches
    .map((batch) => ({ batch, likely: likelihood(batch, kind, due, today) }))
    .sort(
      (a, b) =>
        b.likely - a.likely ||
        day(b.batch).localeCompare(day(a.batch)) ||
        a.batch.code.localeCompare(b.batch.code),
    )
    .map(({ batch }) => batch);
}

function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\p{M}\s\-_.#]/gu, '')
    .toLowerCase();
}

/** Batches whose code, species or site holds what was typed, those whose code begins with it first. */
export function findBatches(batches: readonly OpenBatch[], typed: string): readonly OpenBatch[] {
  const wanted = plain(typed);
  if (wanted === '') return [];
  const begins = batches.filter(({ code }) => plain(code).startsWith(wanted));
  const holds = batches.filter(
    (batch) =>
      !begins.includes(batch) &&
      [batch.code, batch.speciesEn, batch.speciesEs, batch.siteName].some((text) =>
        plain(text).includes(wanted),
      ),
  );
  return [...begins, ...holds];
}
