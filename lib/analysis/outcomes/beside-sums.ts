import { type CalendarDate, daysBetween } from '@/lib/growing/calendar-date';
import type { ApartBatches, ApartNames } from './apart-batches';
import type { Quarter } from './quarters-held';
import type { YoungBatches } from './young-batches';

/** What kept sums cannot tell of one site's batches of a kind of container. */
export type BesideOfSite = { readonly young: YoungBatches; readonly apart: readonly ApartBatches[] };

/**
 * What kept sums cannot tell of a kind of container, at any time, of any species, material and method: which batches are too
 * young on a day, and how many clusters the runs make that reach over several sums. One of these answers every question,
 * today's and those of the days after.
 */
export type BesideSums = {
  /** The write up to which it is told. */
  readonly version: bigint | undefined;
  /** Batches too young on this day or a later one are held. */
  readonly day: CalendarDate;
  /** Batches apart that were inoculated in these calendar quarters are held. */
  readonly quarters: readonly Quarter[];
  readonly sites: ReadonlyMap<string, BesideOfSite>;
  /** Of each run that was read: there are tens of thousands, and their ids are long. */
  readonly names: ApartNames;
};

/** What days have to be held for a question. */
export type DaysHeld = Pick<BesideSums, 'day' | 'quarters'>;

/** After so many days most of what was young is no longer. */
const mostDays = 31;

/** Whether the young batches of a day are held. */
export function holdsDay(beside: DaysHeld, { day }: DaysHeld): boolean {
  return beside.day <= day && daysBetween(beside.day, day) <= mostDays;
}

/** Lays what was read over what was held: of sites that were written all, of the others the quarters not held. */
export function besideWith(before: BesideSums, read: BesideSums, written: readonly string[]): BesideSums {
  const sites = new Map(before.sites);
  for (const site of written) sites.delete(site);
  for (const [site, own] of read.sites) {
    const { young = [], apart = [] } = sites.get(site) ?? {};
    // The same list where nothing is added: what was worked out of it is found by it.
    const both = own.young.length === 0 ? young : [...young, ...own.young];
    sites.set(site, { young: both, apart: [...apart, ...own.apart] });
  }
  return { ...read, sites };
}

/** The same after a write: sites written since are those that were read, everything else stands. */
export function laidOver<Own>(
  before: ReadonlyMap<string, Own>,
  read: { readonly written: readonly string[]; readonly sites: ReadonlyMap<string, Own> },
): ReadonlyMap<string, Own> {
  const sites = new Map(before);
  for (const site of read.written) sites.delete(site);
  for (const [site, own] of read.sites) sites.set(site, own);
  return sites;
}
