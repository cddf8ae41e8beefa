import type { CalendarDate } from '@/lib/growing/calendar-date';

/** What a fault of a record takes away from. */
export type FaultEffect = 'contamination' | 'yield' | 'treatment' | 'lots' | 'report';

/** Every kind of record that is missing or hard to believe, in the order in which a page lists them, with what it takes away from. */
export const faultEffects = {
  'not-inspected': 'contamination',
  'no-window': 'contamination',
  'not-weighed': 'yield',
  'harvest-unknown': 'yield',
  'no-dry-mass': 'yield',
  'no-area': 'yield',
  'assumed-moisture': 'yield',
  quiet: 'yield',
  'run-missing': 'treatment',
  'run-no-end': 'treatment',
  'run-no-readings': 'treatment',
  'no-spawn-lot': 'lots',
  'no-destination': 'report',
  'yield-high': 'yield',
  'yield-low': 'yield',
  'weighing-heavy': 'yield',
  'run-after-filling': 'treatment',
  'entry-after-closing': 'yield',
} as const satisfies Readonly<Record<string, FaultEffect>>;

export type FaultKind = keyof typeof faultEffects;

/** These are there but hard to believe; all others are missing. */
const hardToBelieve: ReadonlySet<FaultKind> = new Set([
  'yield-high',
  'yield-low',
  'weighing-heavy',
  'run-after-filling',
  'entry-after-closing',
]);

export const isImplausible = (kind: FaultKind): boolean => hardToBelieve.has(kind);

/** One record that somebody could mend. */
export type RecordFault = {
  readonly kind: FaultKind;
  readonly siteId: string;
  readonly of: 'batch' | 'run' | 'weighing';
  /** Of the batch, run or weighing to mend. */
  readonly id: string;
  /** Code of the batch or run; of a weighing the codes of its batches. */
  readonly code: string;
  /** The day since which it is missing, or on which it was written; by the site's calendar. */
  readonly on: CalendarDate;
};

/** Made once: each comparison of two texts by their own method looks one up. */
const { compare } = new Intl.Collator();

/** Latest first; of one day by code. */
export function inOrder(faults: readonly RecordFault[]): RecordFault[] {
  return [...faults].sort(
    (a, b) =>
      (a.on === b.on ? 0 : a.on < b.on ? 1 : -1) ||
      compare(a.code, b.code) ||
      a.kind.localeCompare(b.kind) ||
      a.id.localeCompare(b.id),
  );
}
