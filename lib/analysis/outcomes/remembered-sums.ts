import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { daysHeld } from './beside-of-text';
import { daysAtSites } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';
import { readPeriod } from './read-period';
import { readSiteSums, type SitesRead } from './read-site-sums';
import { apartBeside, readWholeSums, type WholeSums, wholeOf } from './read-whole-sums';
import { besideRemembered, rememberBeside } from './remembered-beside';
import { oldestOf, rememberYears, type SumsOfYears, yearsRemembered } from './remembered-years';
import { type RowsOfSites, rowsThatHold } from './rows-of-sites';

/** So many questions are remembered in a process, some twelve megabytes each in a network of a thousand sites. */
const most = 12;
/** When more sites than this were written since, all are read: one by one they would take longer. */
const mostSites = 150;

export type RememberedSums = WholeSums & {
  /** Rows of sites that were read since they were last written, to be added to; undefined where nothing is remembered. */
  readonly rowsOfSites?: RowsOfSites;
};

/** What is remembered of a question: what was read, and what that comes to for all methods or one. */
type Remembered = {
  readonly read: SitesRead;
  readonly wholes: Map<string | undefined, RememberedSums>;
  readonly apart: ReturnType<typeof apartBeside>;
  /** What still held of the rows of sites when this was read, by method. */
  readonly rows: ReadonlyMap<string | undefined, RowsOfSites>;
};
const known = new Map<string, Remembered>();

type State = { version: bigint; sites: number; sitesBeside: number; sitesYears: number };

/**
 * How often what is kept of batches has been written, and at how many sites since three states. Undefined where nothing was
 * counted yet, or for who may no longer read it.
 */
async function readState(
  { db, actor }: ReadContext,
  since: bigint | undefined,
  sinceBeside: bigint | undefined,
  sinceYears: bigint | null,
): Promise<State | undefined> {
  const [state] = await db.$queryRaw<State[]>`
    select version, (select count(*)::int from outcome_site_version s
        where s.network_id = v.network_id and s.version > ${since ?? null}::bigint) as sites,
      (select count(*)::int from outcome_site_version s
        where s.network_id = v.network_id and s.version > ${sinceBeside ?? null}::bigint) as "sitesBeside",
      (select count(*)::int from outcome_site_version s
        where s.network_id = v.network_id and s.version > ${sinceYears}::bigint) as "sitesYears"
    from outcome_version v where network_id = ${actor.networkId}::uuid`;
  return state;
}

/** What was read in a state is of use while few sites were written since. A database that is behind it was restored. */
function usable<Read extends { readonly version: bigint | undefined }>(
  read: Read | undefined,
  { version }: State,
  sites: number,
): Read | undefined {
  if (read?.version === undefined || read.version > version || sites > mostSites) return undefined;
  return read;
}

/** Those years that are of use; others are read whole. */
function yearsThatServe(years: SumsOfYears, { version, sitesYears }: State): SumsOfYears {
  if (sitesYears > mostSites) return new Map();
  return new Map([...years].filter(([, own]) => own.version !== undefined && own.version <= version));
}

function begun(
  read: SitesRead,
  before: Remembered | undefined,
  apart: ReturnType<typeof apartBeside>,
): Remembered {
  const rows = new Map([...(before?.wholes ?? [])].map(([method, { rowsOfSites }]) => [method, rowsOfSites]));
  return {
    read,
    apart,
    wholes: new Map(),
    rows: before === undefined ? new Map() : rowsThatHold(rows, before.read, read),
  };
}

function wholeIn({ read, wholes, apart, rows }: Remembered, method: string | undefined): RememberedSums {
  const whole = wholes.get(method) ?? {
    ...wholeOf(read, apart, method),
    rowsOfSites: rows.get(method) ?? new Map(),
  };
  wholes.set(method, whole);
  return whole;
}

/**
 * The sums within the filter as of today. What each site adds is remembered, and after a write only the sites that were
 * written are read again: a reader goes from the comparison to the batches behind a figure and back, while others write.
 * Only for who sees the whole network; what a member or a token may see is read each time.
 */
export async function rememberedWholeSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<RememberedSums> {
  const { actor } = context;
  if (actor.role !== 'coordinator' || actor.token !== undefined) return readWholeSums(context, wanted, today);
  const period = await readPeriod(context, wanted);
  if (period === undefined || today.size === 0) return readWholeSums(context, wanted, today);
  // Another day, or a batch beyond all before, is another question.
  const key = JSON.stringify([actor.networkId, boundsOf(wanted), period, daysAtSites(today)]);
  const before = known.get(key);
  const ofContainer = `${actor.networkId} ${wanted.container}`;
  const besideBefore = besideRemembered(ofContainer, daysHeld(period, today));
  const ofYears = `${ofContainer} ${boundsOf(wanted).species}`;
  const yearsBefore = yearsRemembered(ofYears, period.years);
  const state = await readState(
    context,
    before?.read.sums.version,
    besideBefore?.version,
    oldestOf(yearsBefore),
  );
  if (state === undefined) return readWholeSums(context, wanted, today);
  if (before?.read.sums.version === state.version) return keep(key, before, wanted.method);
  const [sums, beside] = [
    usable(before?.read.sums, state, state.sites),
    usable(besideBefore, state, state.sitesBeside),
  ];
  const { years, ...read } = await readSiteSums(context, wanted, period, today, {
    years: yearsThatServe(yearsBefore, state),
    ...(sums === undefined ? {} : { sums }),
    ...(beside === undefined ? {} : { beside }),
  });
  rememberBeside(ofContainer, read.beside);
  rememberYears(ofYears, years);
  const earlier = sums === undefined ? undefined : before;
  const own = begun(read, earlier, apartBeside(read.beside, wanted, today));
  return keep(key, own, wanted.method);
}

/** The one used last goes to the end; the first is the one unused for longest. */
function keep(key: string, own: Remembered, method: string | undefined): RememberedSums {
  known.delete(key);
  if (own.read.sums.version !== undefined) known.set(key, own);
  const [oldest] = known.keys();
  if (known.size > most && oldest !== undefined) known.delete(oldest);
  return wholeIn(own, method);
}
