import type { KnownMoisture } from '@/lib/growing/batch-dry-mass';
import type { SuitabilityTable } from '@/lib/growing/check-suitability';
import type { BatchFacts } from '@/lib/growing/derive-batch';
import type { MaterialKind, MethodKind } from '@/lib/growing/vocabulary';
import type { FormState } from '../form/field-spec';
import type { TemperatureUnit } from '../format/temperature-text';
import type { Messages } from '../messages/en';

/** The sentences of the sums with their places in braces, translated on the server. */
export type SumWords = Messages['sums']['lines'];

/** How the reader likes numbers and units; `locale` decides the decimal sign. */
export type SumReader = {
  readonly locale: string;
  readonly massUnit: 'kg' | 'lb';
  readonly temperatureUnit: TemperatureUnit;
  readonly volumeUnit: 'litre' | 'gallon';
  readonly language: 'en' | 'es';
};

/** What a site has left of a spawn lot: receipts minus shares, whole grams; shares without a mass are counted apart. */
export type SpawnLeft = {
  readonly lotId: string;
  readonly siteId: string;
  readonly grams: number;
  readonly unweighed: number;
};

/** What the records say about the choices of a batch form, for sums made while it is filled in. */
export type SumFacts = {
  readonly containerKind: BatchFacts['containerKind'];
  readonly lots: readonly {
    readonly id: string;
    readonly materialId: string;
    readonly materialKind: MaterialKind;
    readonly received: KnownMoisture;
  }[];
  readonly methods: readonly { readonly id: string; readonly kind: MethodKind }[];
  readonly runs: readonly { readonly id: string; readonly methodId: string }[];
  readonly drained: readonly {
    readonly materialId: string;
    readonly methodId: string;
    readonly percent: number;
  }[];
  readonly spawnLots: readonly { readonly id: string; readonly code: string }[];
  readonly spawnLeft: readonly SpawnLeft[];
  readonly species: readonly { readonly id: string; readonly name: string }[];
  /** By id of species, without what suits: that is never said. */
  readonly suitability: Readonly<Record<string, Pick<SuitabilityTable, 'materials' | 'methods'>>>;
  readonly pairs: SuitabilityTable['pairs'];
};

export type SumInput = {
  readonly values: FormState['values'];
  readonly facts: SumFacts | null;
  readonly words: SumWords;
  readonly reader: SumReader;
};

/** A sentence of a sum; `watch` marks one that asks for care. */
export type SumLine = { readonly key: string; readonly text: string; readonly tone?: 'watch' };

/** What a sum says, and what of it another form can take over, by that form's field names. */
export type SumAnswer = {
  readonly lines: readonly SumLine[];
  readonly carry?: Readonly<Record<string, string>>;
};

/** Fills the places of a sentence. */
export function fillWords(sentence: string, values: Readonly<Record<string, string | number>> = {}): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) => String(values[name] ?? place));
}
