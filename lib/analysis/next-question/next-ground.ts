import type { MethodSuitabilityWord } from '@/lib/growing/method-suitability';
import type { MethodKind } from '@/lib/growing/vocabulary';

/** A material with a species that a site grows, or could from what it received, with what the table says of each method. */
export type SiteMix = {
  readonly speciesId: string;
  readonly materialId: string;
  /** Batches of it in the period; 0 where the material was only received. */
  readonly batches: number;
  readonly methods: readonly (MethodSuitabilityWord & { readonly methodId: string })[];
};

/** What is asked of one site; what is undefined is left to what it grows. */
export type AskedMix = {
  readonly siteId: string;
  readonly speciesId: string | undefined;
  readonly materialId: string | undefined;
  /** Season ('1' winter) of the batch; null for the year. */
  readonly season: string | null;
};

/** What a site has to choose from. */
export type SiteGround = {
  readonly siteId: string;
  /** Season of its next batch ('1' winter); null for the year. */
  readonly season: string | null;
  /** The most grown first. */
  readonly mixes: readonly SiteMix[];
  /** Methods that are looked at: those that the site can use, or all where the reader says which. */
  readonly usable: readonly string[];
  /** Nothing is known of what it can use: it has used nothing and nobody has said anything, so all are taken. */
  readonly unsaid: boolean;
};

export type NextGround = {
  readonly sites: readonly SiteGround[];
  readonly methodKinds: Readonly<Record<string, MethodKind>>;
};
