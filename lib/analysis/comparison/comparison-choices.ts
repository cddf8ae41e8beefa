import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
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

const named = { id: true, nameEn: true, nameEs: true } as const;
type NamedRow = { id: string; nameEn: string; nameEs: string };

function asNamed({ id, nameEn, nameEs }: NamedRow): Named {
  return { id, en: nameEn, es: nameEs };
}

/**
 * The page opens on the two years up to the latest batch, from the beginning of the quarter in which they began (which kept
 * sums hold whole), and on the species and container most used in the calendar years of that time, by the kept sums.
 */
async function readDefaults({ db, actor }: ReadContext): Promise<ComparisonDefaults | undefined> {
  const [latest] = await db.$queryRaw<{ on: string }[]>`
    select inoculated_on::text as on from batch
    where network_id = ${actor.networkId}::uuid and voided_at is null order by inoculated_on desc limit 1`;
  const to = latest?.on;
  if (!to) return undefined;
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
function datesAt(sites: readonly { readonly id: string; readonly timeZone: string }[], now: Date): SiteDates {
  const zones = new Set(sites.map(({ timeZone }) => timeZone));
  const days = new Map([...zones].map((zone) => [zone, todayInZone(zone, now)]));
  return new Map(sites.map(({ id, timeZone }) => [id, days.get(timeZone) ?? todayInZone(timeZone, now)]));
}

/** What the filter form offers. Voided species, methods and the like stay, since old batches still name them. */
export async function readComparisonChoices(context: ReadContext, now: Date): Promise<ComparisonChoices> {
  const { db } = context;
  const species = await db.species.findMany({ select: named, orderBy: { nameEn: 'asc' } });
  const materials = await db.material.findMany({ select: named, orderBy: { nameEn: 'asc' } });
  const methods = await db.method.findMany({ select: named, orderBy: { nameEn: 'asc' } });
  const sites = await db.site.findMany({
    select: { id: true, code: true, name: true, timeZone: true, leftAt: true },
    orderBy: { name: 'asc' },
  });
  return {
    species: species.map(asNamed),
    materials: materials.map(asNamed),
    methods: methods.map(asNamed),
    sites: sites.map(({ id, code, name, leftAt }) => ({ id, code, name, left: leftAt !== null })),
    sitesLeft: await readSitesLeft(context),
    today: datesAt(sites, now),
    defaults: await readDefaults(context),
  };
}
