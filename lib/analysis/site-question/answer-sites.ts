import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import type { Limited } from '../adjusted/adjusted-rates';
import { batchCorrelation } from '../adjusted/batch-correlation';
import { type CountedBatch, contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { covariatePart, spreadOf } from '../adjusted/covariate-part';
import type { ModelBatch } from '../adjusted/model-batch';
import type { ComparedRow } from '../comparison/compare';
import type { Fit } from '../fitting/fit';
import { levelledFigure } from '../method-question/levelled-figure';
import { grouped } from '../programme/grouped';
import { designKey, type WorkOutWidths, widthsOf } from './course-widths';
import { type Expected, expectations } from './expectations';
import { courseDesign, siteCourse } from './site-course';
import { siteFunnel } from './site-funnel';
import { siteCells } from './site-rows';
import { siteSignals } from './site-signals';
import type { SitePart, SitesAnswer } from './sites-answer';

export type SitesData = {
  readonly batches: readonly ModelBatch[];
  /** Raw figures by site, of the same batches. */
  readonly raw: readonly ComparedRow[];
  readonly asOf: string;
};

/** How each site does. The order of the batches does not change the answer. */
export async function answerSites(
  { batches, raw, asOf }: SitesData,
  fitModel: Fit,
  workOut: WorkOutWidths,
): Promise<SitesAnswer> {
  const counted = countedBatches(batches);
  const options = { levelledOut: { material: false, season: false }, sites: 'within' } as const;
  const { fixed } = contaminationRequest(counted, options).input;
  const cells = siteCells(counted, fixed);
  const rows = cells.flatMap(({ there, typical }) => [there, typical]);
  const answer =
    counted.length < 10
      ? undefined
      : await fitModel(contaminationRequest(counted, { ...options, predict: rows }));
  const fitted = answer?.kind === 'answer' ? answer : undefined;
  const expected = fitted
    ? expectations(fitted, cells, spreadOf(covariatePart(fitted.fit, fixed, 'own')))
    : undefined;
  const verdicts = verdictsOf(expected ?? new Map());
  const correlation = fitted ? batchCorrelation(fitted.fit, counted) : 0;
  const fewLevels = (fitted?.fit.fewLevels ?? []).length > 0;
  const bySite = grouped(counted, ({ siteId }) => siteId);
  const batchesOf = (site: string) => bySite.get(site) ?? [];
  const designs = new Map(
    raw.flatMap(({ site }) => {
      const design = site === undefined ? undefined : courseDesign(batchesOf(site), correlation);
      return site === undefined || design === undefined ? [] : [[site, design] as const];
    }),
  );
  const widths = await widthsOf([...designs.values()], workOut);
  const sites = raw.flatMap((row): Omit<SitePart, 'signals'>[] => {
    if (row.site === undefined) return [];
    const design = designs.get(row.site);
    const own = expected?.get(row.site);
    const figure = (value: Limited | undefined) =>
      levelledFigure([row.contamination], 'percent', 'contamination', value ?? 'not-enough-data', fewLevels);
    return [
      {
        siteId: row.site,
        raw: row.contamination,
        shrunk: figure(own?.there),
        typical: figure(own?.typical),
        verdict: verdicts.get(row.site) ?? 'alike',
        course: siteCourse(
          batchesOf(row.site),
          correlation,
          design === undefined ? undefined : widths.get(designKey(design)),
        ),
        sitesCompared: raw.length,
        asOf,
      },
    ];
  });
  const signals = siteSignals(sites);
  return {
    sites: sites.map((site) => ({ ...site, signals: signals.get(site.siteId) ?? [] })),
    funnel: siteFunnel(funnelSites(counted)),
  };
}

/** A site can be told from a typical one when it can with all sites looked at together (Holm). */
const significance = 0.05;

function verdictsOf(expected: ReadonlyMap<string, Expected>): ReadonlyMap<string, SitePart['verdict']> {
  const sites = [...expected];
  const adjusted = adjustPValues(
    sites.map(([, { pValue }]) => pValue),
    'holm',
  );
  return new Map(
    sites.map(([siteId, { there, typical }], index) => {
      const told = (adjusted[index] ?? 1) <= significance;
      return [siteId, !told ? 'alike' : there.estimate > typical.estimate ? 'more' : 'fewer'];
    }),
  );
}

function funnelSites(batches: readonly CountedBatch[]) {
  const sites = new Map<string, { label: string; events: number; units: number }>();
  for (const { siteId, contaminated, units } of batches) {
    const site = sites.get(siteId) ?? { label: siteId, events: 0, units: 0 };
    sites.set(siteId, { label: siteId, events: site.events + contaminated, units: site.units + units });
  }
  return [...sites.values()].sort((a, b) => (a.label < b.label ? -1 : 1));
}
