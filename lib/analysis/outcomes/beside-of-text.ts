import type { SiteDates } from '../comparison/batch-facts';
import { apartOfSites, noApartNames } from './apart-batches';
import { type BesideOfSite, type BesideSums, besideWith, type DaysHeld } from './beside-sums';
import { daysAtSites } from './days-at-sites';
import { quartersOf } from './quarters-held';
import type { SplitPeriod } from './split-period';
import { youngOfSites } from './young-batches';

type BesideText = {
  readonly young: string | null;
  readonly apart: string | null;
  readonly version: bigint | null;
  readonly writtenBeside: readonly string[] | null;
};

/** What has to be held for a question to be answered: whole quarters, since the next one often begins in the same. */
export function daysHeld(period: SplitPeriod, today: SiteDates): DaysHeld {
  return { quarters: quartersOf(period), day: daysAtSites(today).first ?? '1970-01-01' };
}

/** What the statement of a question says beside its sums, laid over what was held. */
export function besideOfText(
  lists: BesideText | undefined,
  before: BesideSums | undefined,
  { day, quarters }: DaysHeld,
): BesideSums {
  const names = before?.names ?? noApartNames();
  const [young, apart] = [youngOfSites(lists?.young ?? null), apartOfSites(lists?.apart ?? null, names)];
  const sites = new Map<string, BesideOfSite>();
  for (const id of new Set([...young.keys(), ...apart.keys()]))
    sites.set(id, { young: young.get(id) ?? [], apart: apart.get(id) ?? [] });
  const version = lists?.version ?? undefined;
  const read = { day, quarters, version, names, sites };
  return before === undefined ? read : besideWith(before, read, lists?.writtenBeside ?? []);
}
