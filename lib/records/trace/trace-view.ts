import type {
  CloseReason,
  ContainerKind,
  ContaminationSign,
  Destination,
  LossCause,
} from '@/lib/database/generated/enums';
import type { TracedKind, TraceLink } from './trace-link';
import type { WhereItWent } from './where-it-went';

type InTwoLanguages = { readonly en: string; readonly es: string };

/** What a reader may know of an end of a link: a batch of another site by its code and the site's name, no more. */
export type TraceName = {
  readonly kind: TracedKind;
  readonly id: string;
  /** Null for a weighing, which has none. */
  readonly code: string | null;
  readonly siteName: string | null;
  /** Of a lot's kind of material or species, or of a run's method. */
  readonly what: InTwoLanguages | null;
  /** Whom a lot came from: the maker of spawn, the source of a material. */
  readonly maker: string | null;
  /** The day of inoculation, receipt, treatment (by UTC) or picking. */
  readonly on: string | null;
  readonly voided: string | null;
  /** Whether the reader can open its page. */
  readonly visible: boolean;
};

/** A batch that the reader may see, with what became of its units and what it gave; units and whole grams. */
export type TracedBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly secondLife: boolean;
  readonly inoculatedOn: string;
  readonly closedOn: string | null;
  readonly closeReason: CloseReason | null;
  /** Still standing; 0 once the batch is closed. */
  readonly live: number;
  readonly contaminated: number;
  /** Lost otherwise, without those found contaminated before. */
  readonly lostClean: number;
  readonly moved: number;
  readonly signs: Readonly<Partial<Record<ContaminationSign, number>>>;
  readonly causes: Readonly<Partial<Record<LossCause, number>>>;
};

/** A weighing that batches of a trace were picked into. */
export type TracedHarvest = {
  readonly id: string;
  readonly siteName: string;
  readonly weighedOn: string;
  /** On the scale, whole grams. */
  readonly freshGrams: number;
  /** Of it from batches of this trace. */
  readonly tracedGrams: number;
  readonly batchIds: readonly string[];
  /** Whether batches that are not of this trace were weighed in the same crate. */
  readonly mixed: boolean;
  readonly destinations: Readonly<Partial<Record<Destination, number>>>;
  /** Of what was on the scale, that of which nobody wrote down where it went. */
  readonly notSaidGrams: number;
};

/** One direction of a trace. */
export type TraceSide = {
  readonly links: readonly TraceLink[];
  readonly takenOut: readonly TraceLink[];
  readonly batches: readonly TracedBatch[];
  readonly harvests: readonly TracedHarvest[];
};

/** What something went into, apart from the rest of its way on. */
export type TracePart = Pick<TraceSide, 'batches' | 'harvests'> & { readonly went: WhereItWent };

export type Trace = {
  readonly start: TraceName;
  readonly back: TraceSide;
  readonly on: TraceSide;
  /** What it went into itself, second lives included, and what became of that. */
  readonly own: TracePart;
  /** The same of lots of spawn made from it; null where none was. */
  readonly made: TracePart | null;
  /** Every end of every link told, and the start, by id. */
  readonly names: ReadonlyMap<string, TraceName>;
};
