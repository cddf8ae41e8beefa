import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { besideOfText, daysHeld } from './beside-of-text';
import { type BesideSums, type DaysHeld, laidOver } from './beside-sums';
import { addSums, type SiteSums, siteIn } from './cell-sums';
import { daysAtSites, epochDay, epochDaysAt } from './days-at-sites';
import { type KeptColumns, keptOfColumns } from './kept-of-columns';
import { addNear, type NearColumns } from './near-batches';
import type { OutcomesWanted } from './outcomes-wanted';
import { quartersOfBoth } from './quarters-held';
import { type SumsOfYears, yearsAfter } from './remembered-years';
import { siteSumsText } from './site-sums-text';
import type { SplitPeriod } from './split-period';
import type { NetworkTotal } from './sums-of-totals';
import { type YoungAsked, youngSums } from './young-sums';

type Lists = KeptColumns & {
  near: string | null;
  network: string | null;
  young: string | null;
  apart: string | null;
  /** The state that the statement saw. */
  version: bigint | null;
  /** The sites asked about, those of which there is nothing any more among them; null: all. */
  written: readonly string[] | null;
  writtenBeside: readonly string[] | null;
  writtenYears: readonly string[] | null;
};

export type SumsOfSites = {
  readonly version: bigint | undefined;
  /** The sites asked about where only those written since are: what is remembered of any other stands. */
  readonly written: readonly string[];
  readonly sites: ReadonlyMap<string, SiteSums>;
  readonly network: readonly NetworkTotal[];
};

/** What is read of each site of a question: its sums, and what they cannot tell, of one state of the records. */
export type SitesRead = {
  readonly sums: SumsOfSites;
  readonly beside: BesideSums;
};

/**
 * What is remembered: of the question its sums, what sums of this container cannot tell, and of those whole years that the
 * question takes in what other questions have read; without `years` the years are not told one by one.
 */
export type SitesKnown = {
  readonly sums?: SumsOfSites;
  readonly beside?: BesideSums;
  readonly years?: SumsOfYears;
};

/**
 * The sums of each site within the filter as of today, of every method: of all sites, or of those written since what is
 * remembered; and the network's totals. Batches that are different today than in kept sums are laid over them: those at the
 * period's ends, read for this question, and those whose day lies ahead at their site, remembered for all questions. One
 * statement, so that no write comes between its parts.
 */
export async function readSiteSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  period: SplitPeriod,
  today: SiteDates,
  known: SitesKnown,
): Promise<SitesRead & { readonly years: SumsOfYears }> {
  const since = known.sums?.version ?? null;
  const before = known.beside;
  const asked = daysHeld(period, today);
  const held: DaysHeld = {
    day: before?.day ?? asked.day,
    quarters: quartersOfBoth(before?.quarters ?? [], asked.quarters),
  };
  // Totals of years do not tell materials apart.
  const heldYears = boundsOf(wanted).material === null ? known.years : undefined;
  const statement = siteSumsText(context, { wanted, period, today, since, before, held, heldYears });
  const { db } = context;
  // Row policies let the database think that there are few sums: it would sort them all instead of hashing a thousand sites.
  await db.$queryRaw`select set_config('enable_sort', 'off', true)`;
  const [lists] = await db.$queryRaw<Lists[]>(statement);
  await db.$queryRaw`select set_config('enable_sort', 'on', true)`;
  const beside = besideOfText(lists, before, held);
  const kept = keptOfColumns(lists);
  const years = yearsAfter(heldYears ?? new Map(), {
    version: lists?.version ?? undefined,
    years: heldYears === undefined ? [] : period.years,
    written: lists?.writtenYears ?? [],
    sums: kept.years,
  });
  const onlyWritten = since === null ? undefined : (lists?.written ?? []);
  addYears(kept.rest, years, onlyWritten);
  // The shapes are the statement's own.
  addNear(JSON.parse(lists?.near ?? '[]') as NearColumns[], kept.rest);
  addYoung(kept.rest, beside, youngAsked(wanted, period, today), onlyWritten);
  const sums: SumsOfSites = {
    sites: kept.rest,
    version: lists?.version ?? undefined,
    written: lists?.written ?? [],
    network: JSON.parse(lists?.network ?? '[]') as NetworkTotal[],
  };
  if (known.sums === undefined || since === null) return { sums, beside, years };
  return { beside, years, sums: { ...sums, sites: laidOver<SiteSums>(known.sums.sites, sums) } };
}

/** Lays whole years over the sums of sites: of all, or of those asked about only. */
function addYears(
  sites: Map<string, SiteSums>,
  years: SumsOfYears,
  only: readonly string[] | undefined,
): void {
  for (const { sites: ofYear } of years.values())
    for (const id of only ?? ofYear.keys()) {
      const own = ofYear.get(id);
      if (own !== undefined) addSums(siteIn(sites, id), own);
    }
}

function addYoung(
  sites: Map<string, SiteSums>,
  beside: BesideSums,
  asked: YoungAsked,
  only: readonly string[] | undefined,
): void {
  for (const id of only ?? beside.sites.keys()) {
    const young = beside.sites.get(id)?.young ?? [];
    if (young.length > 0) addSums(siteIn(sites, id), youngSums(young, asked, asked.dayAt(id)));
  }
}

function youngAsked(wanted: OutcomesWanted, { days }: SplitPeriod, today: SiteDates): YoungAsked {
  const { from, to, species, material } = boundsOf(wanted);
  const ends = days.map(([start, end]) => [epochDay(start), epochDay(end)] as const);
  const dayAt = epochDaysAt(today);
  // A site that began after the choices were read is held to the earliest day.
  const earliest = epochDay(daysAtSites(today).first ?? from);
  return {
    ...{ species, material, first: epochDay(from), last: epochDay(to) },
    dayAt: (site) => dayAt(site) ?? earliest,
    ends,
  };
}
