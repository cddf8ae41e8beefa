import type { MethodKind } from '@/lib/growing/vocabulary';
import { type ComparedRow, compareOne } from '../comparison/compare';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import type { JudgedBatch } from '../comparison/judged-batch';
import { levelStanding, standingOfBoth } from './level-standing';
import { type CostedDryBatch, methodCost } from './method-cost';
import type { NextChoice, Outlook } from './next-answer';
import type { SiteMix } from './next-ground';
import type { Cell, Predicted } from './predict-cells';
import { predictedLoss, predictedYield } from './predicted-figure';
import { predictionGround } from './prediction-ground';
import { jointOf, settleChoice } from './settle-choice';

type Ask = {
  readonly mix: SiteMix;
  readonly cell: Cell;
  readonly kinds: Readonly<Record<string, MethodKind>>;
  /** The site's judged batches. */
  readonly own: readonly JudgedBatch[];
  readonly usualUnits: number;
  /** Raw figures of a method in the whole network. */
  readonly rawOf: (method: string) => ComparedRow;
  readonly loss: Predicted | undefined;
  readonly yields: Predicted | undefined;
  readonly costs: { readonly currency: string; readonly batches: readonly CostedDryBatch[] };
  readonly filter: ComparisonFilter;
  readonly asOf: string;
};

/** What a site could do next with one species and material: each method, which one does best, and which would teach most. */
export function nextChoice(ask: Ask): NextChoice {
  const { mix, cell, usualUnits } = ask;
  const { speciesId, materialId } = mix;
  const same = ask.own.filter(
    ({ facts }) => facts.speciesId === speciesId && facts.materialId === materialId && !facts.mixedMaterial,
  );
  const outlooks = mix.methods.flatMap((method) =>
    cell.methods.includes(method.methodId) ? outlookOf(ask, method, same) : [],
  );
  const joints = [...jointOf(ask.yields, cell, 'yield'), ...jointOf(ask.loss, cell, 'loss')];
  const standings = [ask.loss, ask.yields].flatMap((one) => (one ? [levelStanding(one.met, cell)] : []));
  return {
    speciesId,
    materialId,
    batches: mix.batches,
    outlooks,
    unsuited: mix.methods.flatMap(({ methodId, verdict: word, reasons }) =>
      word === 'unsuited' ? [{ methodId, reasons }] : [],
    ),
    notHere: mix.methods.flatMap(({ methodId, verdict: word }) =>
      word === 'unsuited' || cell.methods.includes(methodId) ? [] : [methodId],
    ),
    standing: standings.length === 0 ? null : standings.reduce(standingOfBoth),
    joints,
    ...settleChoice(joints, cell.methods, usualUnits),
  };
}

function outlookOf(
  ask: Ask,
  { methodId, verdict, reasons }: SiteMix['methods'][number],
  same: readonly JudgedBatch[],
): Outlook[] {
  const kind = ask.kinds[methodId];
  if (verdict === 'unsuited' || kind === undefined) return [];
  const { cell, usualUnits, costs, filter, asOf } = ask;
  const { siteId, speciesId, materialId } = cell;
  const ofSite = { ...filter, method: methodId, site: siteId };
  const own = compareOne(same, { ...ofSite, species: speciesId, material: materialId }, asOf);
  const [network, site] = [ask.rawOf(methodId), compareOne(ask.own, ofSite, asOf)];
  const ground = {
    loss: predictionGround(network.contamination, site.contamination),
    yield: predictionGround(network.yield, site.yield),
  };
  const fit = ask.loss?.fit;
  const loss = predictedLoss(
    ground.loss,
    ask.loss?.of(cell, methodId),
    usualUnits,
    (fit?.fewLevels ?? []).length > 0,
  );
  return [
    {
      methodId,
      kind,
      verdict,
      reasons,
      knownBatches: ground.loss.n.batches,
      siteBatches: ask.own.filter(
        ({ methodKey, contamination }) => methodKey === methodId && contamination.kind === 'counted',
      ).length,
      mixBatches: own.contamination.n.batches,
      loss: loss.figure,
      units: loss.units,
      yield: predictedYield(ground.yield, ask.yields?.of(cell, methodId)),
      ownLoss: own.contamination,
      ownYield: own.yield,
      cost: methodCost(costs.batches, methodId, siteId, costs.currency),
    },
  ];
}
