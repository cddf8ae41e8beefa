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

/** What a site has to choose from. */
export type SiteGround = {
  readonly siteId: string;
  /** The most grown first. */
  readonly mixes: readonly SiteMix[];
  /** Methods that the site can use. */
  readonly usable: readonly string[];
  /** Nothing is known of what it can use: it has used nothing and nobody has said anything, so all are taken. */
  readonly unsaid: boolean;
};

export type NextGround = {
  readonly sites: readonly SiteGround[];
  readonly methodKinds: Readonly<Record<string, MethodKind>>;
};
