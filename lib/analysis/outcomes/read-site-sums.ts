import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { besideOfText, daysHeld } from './beside-of-text';
import { type BesideSums, type DaysHeld, laidOver } from './beside-sums';
import { addSums, addTo, cellColumns, cellIn, type SiteSums, siteIn } from './cell-sums';
import { keysOf, numbersOf } from './column-text';
import { daysAtSites, epochDay, epochDaysAt } from './days-at-sites';
import { addNear, type NearColumns } from './near-batches';
import type { OutcomesWanted } from './outcomes-wanted';
import { siteSumsText } from './site-sums-text';
import type { SplitPeriod } from './split-period';
import type { NetworkTotal } from './sums-of-totals';
import { yearsOfBoth } from './years-held';
import { type YoungAsked, youngSums } from './young-sums';

type Columns = Record<(typeof cellColumns)[number], string | null>;
type Lists = Columns & {
  sites: string | null;
  methods: string | null;
  near: string | null;
  network: string | null;
  young: string | null;
  apart: string | null;
  /** The state that the statement saw. */
  version: bigint | null;
  /** The sites asked about, those of which there is nothing any more among them; null: all. */
  written: readonly string[] | null;
  writtenBeside: readonly string[] | null;
};

export type SumsOfSites = {
  readonly version: bigint | undefined;
  /** The sites asked about where only those written since are: what is remembered of any other stands. */
  readonly written: readonly string[];
  readonly sites: ReadonlyMap<string, SiteSums>;
  readonly network: readonly NetworkTotal[];
};

/** What is read of each site of a question: its sums, and what they cannot tell, of one state of the records. */
export type SitesRead = { readonly sums: SumsOfSites; readonly beside: BesideSums };

/** What is remembered: of the question its sums, and what sums of this container cannot tell. */
export type SitesKnown = { readonly sums?: SumsOfSites; readonly beside?: BesideSums };

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
): Promise<SitesRead> {
  const since = known.sums?.version ?? null;
  const before = known.beside;
  const asked = daysHeld(period, today);
  const held: DaysHeld = {
    day: before?.day ?? asked.day,
    years: yearsOfBoth(before?.years ?? [], asked.years),
  };
  const statement = siteSumsText(context, { wanted, period, today, since, before, held });
  const { db } = context;
  // Row policies let the database think that there are few sums: it would sort them all instead of hashing a thousand sites.
  await db.$queryRaw`select set_config('enable_sort', 'off', true)`;
  const [lists] = await db.$queryRaw<Lists[]>(statement);
  await db.$queryRaw`select set_config('enable_sort', 'on', true)`;
  const beside = besideOfText(lists, before, held);
  const sums = sumsOf(lists, beside, youngAsked(wanted, period, today), since !== null);
  if (known.sums === undefined || since === null) return { sums, beside };
  return { beside, sums: { ...sums, sites: laidOver<SiteSums>(known.sums.sites, sums) } };
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

function sumsOf(
  lists: Lists | undefined,
  beside: BesideSums,
  asked: YoungAsked,
  onlyWritten: boolean,
): SumsOfSites {
  const sites = new Map<string, SiteSums>();
  const written = lists?.written ?? [];
  if (lists) addKept(lists, sites);
  // The shapes are the statement's own.
  addNear(JSON.parse(lists?.near ?? '[]') as NearColumns[], sites);
  for (const id of onlyWritten ? written : beside.sites.keys()) {
    const young = beside.sites.get(id)?.young ?? [];
    if (young.length > 0) addSums(siteIn(sites, id), youngSums(young, asked, asked.dayAt(id)));
  }
  return {
    sites,
    version: lists?.version ?? undefined,
    written,
    network: JSON.parse(lists?.network ?? '[]') as NetworkTotal[],
  };
}

function addKept(lists: Lists, sites: Map<string, SiteSums>): void {
  const methods = keysOf(lists.methods);
  const columns = cellColumns.map((name) => numbersOf(lists[name]));
  keysOf(lists.sites).forEach((id, row) => {
    const site = siteIn(sites, id);
    const cell = cellIn(site, methods[row] ?? '');
    for (let at = 0; at < columns.length; at += 1) addTo(site.numbers, cell + at, columns[at]?.[row] ?? 0);
  });
}
