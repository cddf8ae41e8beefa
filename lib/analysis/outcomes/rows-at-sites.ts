import type { SiteDates } from '../comparison/batch-facts';
import { rootsOfRuns, type TreatedIn } from '../comparison/cluster-of-run';
import type { ComparedRow, Comparison } from '../comparison/compare';
import { type ComparisonFilter, queryOfFilter, together } from '../comparison/comparison-filter.input';
import { type FigureAbout, rateFigure } from '../comparison/contamination-figure';
import { ratioFigure } from '../comparison/yield-figure';
import { epochDaysAt } from './days-at-sites';
import { codeOf } from './near-codes';
import { joiningOf, type SiteBatches } from './read-site-batches';
import { SiteGround } from './site-grounds';

/** Grounds by site and method. */
type Grounds = Map<string, Map<string, SiteGround>>;

/**
 * The rows of some sites and of each method there, out of their batches as columns: the very figures that `compareAtSites`
 * adds up from records. `joining` are the batches of several runs at any site, which may join those of these sites.
 * Cells take most of the work, and most pages show none: they are worked out when they are looked at.
 */
export function rowsAtSites(
  batches: readonly SiteBatches[],
  joining: readonly TreatedIn[],
  filter: ComparisonFilter,
  about: { readonly today: SiteDates; readonly asOf: string },
): Pick<Comparison, 'sites' | 'cells'> {
  const { ofSites, ofCells } = groundsOf(batches, joining, filter, about.today);
  const rows = (grounds: Grounds, isCell: boolean) =>
    [...grounds].flatMap(([site, byMethod]) =>
      [...byMethod].map(([method, ground]) =>
        rowOf(ground, { ...filter, site, method: isCell ? method : filter.method }, about.asOf),
      ),
    );
  let cells: ComparedRow[] | undefined;
  return {
    sites: rows(ofSites, false),
    get cells() {
      cells ??= rows(ofCells, true);
      return cells;
    },
  };
}

/** Apart from the rows: what is remembered of these must not hold on to every run of the network. */
function groundsOf(
  batches: readonly SiteBatches[],
  joining: readonly TreatedIn[],
  filter: ComparisonFilter,
  today: SiteDates,
): Pick<Into, 'ofSites' | 'ofCells'> {
  const rootOf = rootsOfRuns([...joiningOf(batches), ...joining]);
  const [ofSites, ofCells]: [Grounds, Grounds] = [new Map(), new Map()];
  const into: Into = { rootOf, dayAt: epochDaysAt(today), ofSites, ofCells };
  batches.forEach((own, index) => {
    const [method] = own.of;
    if (filter.method === undefined || filter.method === method) addBatches(own, index, into);
  });
  return { ofSites, ofCells };
}

type Into = {
  readonly rootOf: (run: string) => string;
  readonly dayAt: (site: string) => number | undefined;
  readonly ofSites: Grounds;
  readonly ofCells: Grounds;
};

function groundIn(grounds: Grounds, site: string, method: string): SiteGround {
  const byMethod = grounds.get(site) ?? new Map<string, SiteGround>();
  grounds.set(site, byMethod);
  const ground = byMethod.get(method) ?? new SiteGround();
  byMethod.set(method, ground);
  return ground;
}

function addBatches({ of, sites, runs, numbers }: SiteBatches, index: number, into: Into): void {
  const code = codeOf(of);
  const [marks = [], contaminationDays = [], yieldDays = [], units = [], contaminated = [], later = []] =
    numbers;
  const [lostClean = [], fresh = [], over = [], freshLater = [], open = [], openDays = []] = numbers.slice(6);
  const [lifeFresh = [], lifeDry = []] = numbers.slice(12);
  const places = new Map<string, Place>();
  for (let row = 0; row < sites.length; row += 1) {
    const site = sites[row] ?? '';
    const place = places.get(site) ?? placeOf(site, of[0], into);
    places.set(site, place);
    const { today } = place;
    if (today === undefined) continue;
    const first = runs[row]?.[0];
    // Spelled out: there are tens of thousands, and spreading takes several times as long.
    const batch = {
      of,
      code,
      flags:
        ((marks[row] ?? 0) & ~8) |
        ((contaminationDays[row] ?? 0) > today ? 2 : 0) |
        ((yieldDays[row] ?? 0) > today ? 4 : 0),
      cluster: first === undefined ? `batch ${index} ${row}` : into.rootOf(first),
      units: units[row] ?? 0,
      contaminated: contaminated[row] ?? 0,
      later: later[row] ?? 0,
      lostClean: lostClean[row] ?? 0,
      fresh: fresh[row] ?? 0,
      over: (over[row] ?? 0) + (open[row] ?? 0) * today - (openDays[row] ?? 0),
      freshLater: freshLater[row] ?? 0,
      lifeFresh: lifeFresh[row] ?? 0,
      lifeDry: lifeDry[row] ?? 0,
    };
    place.ofSite.add(batch);
    place.ofCell.add(batch);
  }
}

type Place = { readonly today: number | undefined; readonly ofSite: SiteGround; readonly ofCell: SiteGround };

function placeOf(site: string, method: string, { dayAt, ofSites, ofCells }: Into): Place {
  const today = dayAt(site);
  // Of a site that is not the reader's there is no row.
  if (today === undefined) return { today, ofSite: new SiteGround(), ofCell: new SiteGround() };
  return { today, ofSite: groundIn(ofSites, site, ''), ofCell: groundIn(ofCells, site, method) };
}

function rowOf(ground: SiteGround, filter: ComparisonFilter, asOf: string): ComparedRow {
  const { container, method, site } = filter;
  const about: FigureAbout = {
    clusterBy: 'treatment-run',
    pooled: { species: filter.species === together, materials: filter.material === together },
    asOf,
    rowsQuery: queryOfFilter(filter),
  };
  const beds = container === 'bed';
  return {
    ...{ method, site },
    contamination: rateFigure(ground.of('contamination'), about, beds),
    contaminationAtAnyTime: rateFigure(ground.of('any-time'), about, beds),
    lostOtherUnits: ground.lostClean,
    yield: ratioFigure(ground.of('yield'), about, container, 'all'),
    yieldOfCropped: ratioFigure(ground.of('cropped'), about, container, 'cropped'),
    logLifeBe: container === 'log' ? ratioFigure(ground.of('life'), about, 'log', 'log-life') : undefined,
    laterGrams: ground.laterGrams,
  };
}
