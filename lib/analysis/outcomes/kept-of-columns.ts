import { addTo, cellColumns, cellIn, type SiteSums, siteIn } from './cell-sums';
import { keysOf, numbersOf } from './column-text';
import { methodCode } from './method-codes';

/** Kept sums as columns: the site, the method, the calendar year where years are told one by one (0: not), the numbers. */
export type KeptColumns = Readonly<
  Record<(typeof cellColumns)[number] | 'sites' | 'methods' | 'years', string | null>
>;

/** What is kept of sites: of whole years by their first day, and of everything else together. */
export type Kept = {
  readonly years: ReadonlyMap<string, ReadonlyMap<string, SiteSums>>;
  readonly rest: Map<string, SiteSums>;
};

export function keptOfColumns(lists: KeptColumns | undefined): Kept {
  const rest = new Map<string, SiteSums>();
  const years = new Map<string, Map<string, SiteSums>>();
  const ofYear = (year: number) => {
    if (year === 0) return rest;
    const start = `${year}-01-01`;
    const own = years.get(start) ?? new Map<string, SiteSums>();
    years.set(start, own);
    return own;
  };
  const [methods, yearOf] = [keysOf(lists?.methods).map(methodCode), numbersOf(lists?.years)];
  const columns = cellColumns.map((name) => numbersOf(lists?.[name]));
  keysOf(lists?.sites).forEach((id, row) => {
    const site = siteIn(ofYear(yearOf[row] ?? 0), id);
    const cell = cellIn(site, methods[row] ?? 0);
    for (let at = 0; at < columns.length; at += 1) addTo(site.numbers, cell + at, columns[at]?.[row] ?? 0);
  });
  return { years, rest };
}
