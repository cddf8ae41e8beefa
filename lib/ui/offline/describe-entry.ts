import type { Entry } from '@/lib/offline/entry';
import { formatDayMonth } from '../format/date-text';
import { fillPlaces } from '../quick/fill-places';
import type { OfflineWords } from './offline-words';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const text = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

/** The batch that an entry is about; '' where it names none. */
export function batchIdOf({ input }: Entry): string {
  const [line] = Array.isArray(input.lines) ? input.lines : [];
  return text(input.batchId) || (isObject(line) ? text(line.batchId) : '');
}

/** The day that an entry is about, as a calendar date; '' where it names none. */
export function dayOf({ input }: Entry): string {
  return text(input.weighedOn ?? input.foundOn ?? input.checkedOn ?? input.lookedOn ?? input.lostOn);
}

/** An entry in a line: "Harvest from KTR-7: 1.25 kg, 4 May". What was typed is shown as typed. */
export function describeEntry(
  entry: Entry,
  codes: ReadonlyMap<string, string>,
  { keep, quick }: OfflineWords,
): string {
  const { input, kind } = entry;
  const batchId = batchIdOf(entry);
  const what = keep.kind[kind];
  const code = codes.get(batchId) ?? keep.kind.unknownBatch;
  const fresh = isObject(input.fresh) ? `${text(input.fresh.text)} ${text(input.fresh.unit)}` : '';
  const sign = Object.entries(quick.sign).find(([name]) => name === input.sign)?.[1] ?? '';
  const seen = Object.entries(quick.checkKind).find(([name]) => name === input.kind)?.[1] ?? '';
  const day = dayOf(entry);
  const details = [
    fresh,
    kind === 'finding' || kind === 'loss' ? [text(input.units), sign].filter(Boolean).join(' × ') : '',
    kind === 'check' ? seen : '',
    /^\d{4}-\d{2}-\d{2}$/.test(day) ? formatDayMonth(day, keep.locale) : '',
  ].filter(Boolean);
  const head = batchId === '' ? what : fillPlaces(keep.kind.from, { what, code });
  return details.length === 0 ? head : `${head}: ${details.join(', ')}`;
}
