import type { SiteDates } from '../comparison/batch-facts';
import { clusterOfRun, type RunMember } from '../comparison/cluster-of-run';
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
 */
export function rowsAtSites(
  batches: readonly SiteBatches[],
  joining: readonly RunMember[],
  filter: ComparisonFilter,
  about: { readonly today: SiteDates; readonly asOf: string },
): Pick<Comparison, 'sites' | 'cells'> {
  const rootOf = rootsOf([...joiningOf(batches), ...joining]);
  const [ofSites, ofCells]: [Grounds, Grounds] = [new Map(), new Map()];
  batches.forEach((own, index) => {
    const [method] = own.of;
    if (filter.method === undefined || filter.method === method)
      addBatches(own, index, { rootOf, dayAt: epochDaysAt(about.today), ofSites, ofCells });
  });
  const rows = (grounds: Grounds, isCell: boolean) =>
    [...grounds].flatMap(([site, byMethod]) =>
      [...byMethod].map(([method, ground]) =>
        rowOf(ground, { ...filter, site, method: isCell ? method : filter.method }, about.asOf),
      ),
    );
  return { sites: rows(ofSites, false), cells: rows(ofCells, true) };
}

/** The cluster of a run: the run itself, unless a batch joins it with others. */
function rootsOf(joining: readonly RunMember[]): (run: string) => string {
  const runs = [...new Set(joining.flatMap(({ runIds }) => runIds))];
  const single = runs.map((run) => ({ id: run, runIds: [run] }));
  const roots = clusterOfRun([...joining.map(({ runIds }, at) => ({ id: `${at}`, runIds })), ...single]);
  return (run) => roots.get(run) ?? run;
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
  sites.forEach((site, row) => {
    const today = into.dayAt(site);
    if (today === undefined) return;
    const at = (place: number) => numbers[place]?.[row] ?? 0;
    const [first] = runs[row] ?? [];
    const batch = {
      ...{ of, code },
      flags: (at(0) & ~8) | (at(1) > today ? 2 : 0) | (at(2) > today ? 4 : 0),
      cluster: first === undefined ? `batch ${index} ${row}` : into.rootOf(first),
      ...{ units: at(3), contaminated: at(4), later: at(5), lostClean: at(6), fresh: at(7) },
      over: at(8) + at(10) * today - at(11),
      ...{ freshLater: at(9), lifeFresh: at(12), lifeDry: at(13) },
    };
    groundIn(into.ofSites, site, '').add(batch);
    groundIn(into.ofCells, site, of[0]).add(batch);
  });
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
