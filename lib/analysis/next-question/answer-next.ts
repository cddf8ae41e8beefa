import { contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { efficiencyRequest, weighedBatches } from '../adjusted/efficiency-request';
import type { ModelBatch } from '../adjusted/model-batch';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { Fit } from '../fitting/fit';
import { type CostedDryBatch, methodCosts } from './method-cost';
import type { NextAnswer, NextPart } from './next-answer';
import { nextBrief } from './next-brief';
import { nextChoice } from './next-choice';
import type { NextGround, SiteGround, SiteMix } from './next-ground';
import { type Cell, predictCells } from './predict-cells';
import { rawOfMethods } from './raw-of-methods';

export type NextData = {
  readonly judged: readonly JudgedBatch[];
  readonly batches: readonly ModelBatch[];
  readonly ground: NextGround;
  readonly costs: { readonly currency: string; readonly batches: readonly CostedDryBatch[] };
  readonly filter: ComparisonFilter;
  readonly asOf: string;
};

/** With fewer batches material and season are not told apart: each would rest on a handful. Our choice. */
const fewestForLevels = 60;
const fewestForFit = 10;
/** A usual batch is the middle one of the site's last ones, by inoculation. */
const lastBatches = 10;

/** What each site could do next. The order of the batches does not change the answer. */
export async function answerNext(data: NextData, fitModel: Fit): Promise<NextAnswer> {
  const { ground, filter, asOf } = data;
  // Sums of the same numbers in another order differ in their last digits.
  const judged = data.judged.toSorted((a, b) => (a.facts.id < b.facts.id ? -1 : 1));
  const cells = new Map(
    ground.sites.flatMap((site) => site.mixes.map((mix) => [mix, cellOf(site, mix)] as const)),
  );
  const counted = countedBatches(data.batches);
  const weighed = weighedBatches(data.batches);
  const levels = (count: number) => ({
    material: count >= fewestForLevels,
    season: count >= fewestForLevels,
  });
  const asked = [...cells.values()];
  const [ofLoss, ofYield] = [levels(counted.length), levels(weighed.length)];
  // Two threads at once, and here meanwhile what needs no model.
  const [loss, yields, raw] = await Promise.all([
    counted.length < fewestForFit
      ? undefined
      : predictCells(
          contaminationRequest(counted, { levelledOut: ofLoss, sites: 'partly' }),
          counted,
          ofLoss,
          asked,
          fitModel,
        ),
    weighed.length < fewestForFit
      ? undefined
      : predictCells(
          efficiencyRequest(weighed, { of: 'all', levelledOut: ofYield, sites: 'partly' }),
          weighed,
          ofYield,
          asked,
          fitModel,
        ),
    (async () => rawOfMethods(judged, filter, asOf))(),
  ]);
  const costOf = methodCosts(data.costs.batches, data.costs.currency);
  let ofAll: number | undefined;
  const usualOfAll = () => {
    ofAll ??= usualOf(judged) ?? 1;
    return ofAll;
  };
  const sites = ground.sites.map((site): NextPart => {
    const records = raw.atSite(site.siteId);
    const usualUnits = usualOf(records.all) ?? usualOfAll();
    return {
      siteId: site.siteId,
      container: filter.container,
      usualUnits,
      season: site.season,
      fewLevels: (loss?.fit.fewLevels ?? []).length > 0,
      unsaid: site.unsaid,
      choices: site.mixes.map((mix) =>
        nextChoice({
          mix,
          cell: cells.get(mix) ?? cellOf(site, mix),
          kinds: ground.methodKinds,
          rawOf: raw.inNetwork,
          records,
          usualUnits,
          loss,
          yields,
          costOf,
          filter,
          asOf,
        }),
      ),
      asOf,
    };
  });
  return { briefs: sites.flatMap(nextBrief), sites };
}

function cellOf({ siteId, season, usable }: SiteGround, { speciesId, materialId, methods }: SiteMix): Cell {
  const suited = methods.filter(({ verdict }) => verdict !== 'unsuited').map(({ methodId }) => methodId);
  return {
    siteId,
    speciesId,
    materialId,
    season,
    methods: usable.filter((method) => suited.includes(method)),
  };
}

function usualOf(judged: readonly JudgedBatch[]): number | undefined {
  const last = judged
    .map(({ facts }) => facts)
    .toSorted((a, b) =>
      a.inoculatedOn === b.inoculatedOn ? (a.id < b.id ? -1 : 1) : a.inoculatedOn < b.inoculatedOn ? 1 : -1,
    )
    .slice(0, lastBatches)
    .map(({ unitCount }) => unitCount)
    .sort((a, b) => a - b);
  return last[Math.floor(last.length / 2)];
}
