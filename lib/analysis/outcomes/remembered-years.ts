import type { SiteSums } from './cell-sums';

/** What the sites of a network had in one whole calendar year, of a kind of container and of one species or all. */
export type YearSums = {
  /** The write up to which it is told; undefined where none was counted yet, and then it is not remembered. */
  readonly version: bigint | undefined;
  readonly sites: ReadonlyMap<string, SiteSums>;
};

/** By the year's first day. */
export type SumsOfYears = ReadonlyMap<string, YearSums>;

/** So many years are remembered, about a megabyte each in a network of a thousand sites. */
const most = 60;

const known = new Map<string, YearSums>();

/** Those years of a question that other questions have read before it. */
export function yearsRemembered(of: string, years: readonly string[]): SumsOfYears {
  return new Map(
    years.flatMap((year) => {
      const own = known.get(`${of} ${year}`);
      return own === undefined ? [] : [[year, own] as const];
    }),
  );
}

/** Remembers them, unless somebody who read at the same time has remembered a later state. The one used last goes to the end. */
export function rememberYears(of: string, years: SumsOfYears): void {
  for (const [year, own] of years) {
    if (own.version === undefined) continue;
    const key = `${of} ${year}`;
    const other = known.get(key);
    known.delete(key);
    known.set(key, other?.version !== undefined && other.version > own.version ? other : own);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
  }
}

/** Forgets everything, as in a process that has just started. */
export function forgetYears(): void {
  known.clear();
}

/** The years after a statement: those read whole as they are, those held with the sites that were written since laid over. */
export function yearsAfter(
  held: SumsOfYears,
  read: {
    readonly version: bigint | undefined;
    readonly years: readonly string[];
    readonly written: readonly string[];
    readonly sums: ReadonlyMap<string, ReadonlyMap<string, SiteSums>>;
  },
): SumsOfYears {
  return new Map(
    read.years.map((year) => {
      const sums = read.sums.get(year) ?? new Map<string, SiteSums>();
      const before = held.get(year);
      if (before === undefined) return [year, { version: read.version, sites: sums }];
      const sites = new Map(before.sites);
      for (const site of read.written) sites.delete(site);
      for (const [site, own] of sums) sites.set(site, own);
      return [year, { version: read.version, sites }];
    }),
  );
}

/** The earliest write up to which any of them is told; null where there is none. */
export function oldestOf(years: SumsOfYears | undefined): bigint | null {
  const versions = [...(years?.values() ?? [])].flatMap(({ version }) => version ?? []);
  return versions.reduce<bigint | null>((least, one) => (least === null || one < least ? one : least), null);
}
