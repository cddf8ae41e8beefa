import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, type CalendarDate, todayInZone } from '@/lib/growing/calendar-date';
import { calendarQuarter } from '@/lib/growing/calendar-quarter';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { readSitesLeft, type SitesLeft } from '../production/read-sites-left';
import type { SiteDates } from './batch-facts';
import type { ComparisonDefaults } from './comparison-filter.input';

/** A record by its name in both languages of the product. */
export type Named = { readonly id: string; readonly en: string; readonly es: string };

/** Species, materials, methods and sites that can be chosen, and what the page opens on. */
export type ComparisonChoices = {
  readonly species: readonly Named[];
  readonly materials: readonly Named[];
  readonly methods: readonly Named[];
  /** Those that have left stay, since their records name them; they are not offered any more. */
  readonly sites: readonly {
    readonly id: string;
    readonly code: string;
    readonly name: string;
    readonly left: boolean;
  }[];
  readonly sitesLeft: SitesLeft;
  /** Today's date at each site. */
  readonly today: SiteDates;
  /** Undefined when the network has no batch yet. */
  readonly defaults: ComparisonDefaults | undefined;
};

/** Two years: long enough to hold whole seasons, short enough to describe how things are done now. */
export const daysShown = 730;

type NamedRow = [id: string, en: string, es: string];
type SiteRow = [id: string, code: string, name: string, timeZone: string, left: boolean];
type Written = {
  readonly species: readonly NamedRow[];
  readonly materials: readonly NamedRow[];
  readonly methods: readonly NamedRow[];
  readonly sites: readonly SiteRow[];
  /** The day of the latest inoculation. */
  readonly latest: CalendarDate | null;
};

const asNamed = ([id, en, es]: NamedRow): Named => ({ id, en, es });

/**
 * All in one statement, each record one array: every page of a network asks for the names of all its sites, and a thousand
 * rows taken apart one by one took longer than the rest.
 */
async function readWritten({ db, actor }: ReadContext): Promise<Written> {
  const network = actor.networkId;
  const [row] = await db.$queryRaw<{ written: Written }[]>`
    select json_build_object(
      'species', (select coalesce(json_agg(json_build_array(id, name_en, name_es) order by name_en), '[]')
        from species where network_id = ${network}::uuid),
      'materials', (select coalesce(json_agg(json_build_array(id, name_en, name_es) order by name_en), '[]')
        from material where network_id = ${network}::uuid),
      'methods', (select coalesce(json_agg(json_build_array(id, name_en, name_es) order by name_en), '[]')
        from method where network_id = ${network}::uuid),
      'sites', (select coalesce(json_agg(json_build_array(id, code, name, time_zone, left_at is not null)
        order by name), '[]') from site where network_id = ${network}::uuid),
      'latest', (select inoculated_on from batch where network_id = ${network}::uuid and voided_at is null
        order by inoculated_on desc limit 1)) as written`;
  return row?.written ?? { species: [], materials: [], methods: [], sites: [], latest: null };
}

/**
 * The page opens on the two years up to the latest batch, from the beginning of the quarter in which they began (which kept
 * sums hold whole), and on the species and container most used in the calendar years of that time, by the kept sums.
 */
async function readDefaults(
  { db, actor }: ReadContext,
  to: CalendarDate | null,
): Promise<ComparisonDefaults | undefined> {
  if (to === null) return undefined;
  const [from] = calendarQuarter(addDays(to, -daysShown));
  type Most = { species: string; container: ContainerKind };
  const [network, kinds] = [actor.networkId, [...containerKinds]];
  // Whoever sees the whole network has its totals; a member's own sites have few sums.
  const [most] =
    actor.role === 'coordinator'
      ? await db.$queryRaw<Most[]>`
    select species_id::text as species, container from outcome_network_total
    where network_id = ${network}::uuid and container = any (${kinds}::text[]) and span = 'year'
      and starts_on between date_trunc('year', ${from}::date) and ${to}::date
      and measure = 'contamination' and class <> 'voided'
    group by species_id, container order by sum(batches) desc, species_id, container limit 1`
      : await db.$queryRaw<Most[]>`
    select species_id::text as species, container from outcome_summary
    where network_id = ${network}::uuid and container = any (${kinds}::text[]) and span = 'year'
      and starts_on between date_trunc('year', ${from}::date) and ${to}::date
      and measure = 'contamination' and class <> 'voided'
    group by species_id, container order by sum(batches) desc, species_id, container limit 1`;
  return most && { from, to, ...most };
}

/** Today's date at each site; there are far fewer zones than sites. */
function datesAt(sites: readonly SiteRow[], now: Date): SiteDates {
  const zones = new Set(sites.map(([, , , timeZone]) => timeZone));
  const days = new Map([...zones].map((zone) => [zone, todayInZone(zone, now)]));
  return new Map(sites.map(([id, , , timeZone]) => [id, days.get(timeZone) ?? todayInZone(timeZone, now)]));
}

/** What the filter form offers. Voided species, methods and the like stay, since old batches still name them. */
export async function readComparisonChoices(context: ReadContext, now: Date): Promise<ComparisonChoices> {
  const { species, materials, methods, sites, latest } = await readWritten(context);
  return {
    species: species.map(asNamed),
    materials: materials.map(asNamed),
    methods: methods.map(asNamed),
    sites: sites.map(([id, code, name, , left]) => ({ id, code, name, left })),
    sitesLeft: await readSitesLeft(context),
    today: datesAt(sites, now),
    defaults: await readDefaults(context, latest),
  };
}
