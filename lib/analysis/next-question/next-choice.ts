import type { MethodKind } from '@/lib/growing/vocabulary';
import { compareShown } from '../comparison/compare';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import { levelStanding, standingOfBoth } from './level-standing';
import type { MethodCosts } from './method-cost';
import type { NextChoice, Outlook } from './next-answer';
import type { SiteMix } from './next-ground';
import type { Cell, Predicted } from './predict-cells';
import { predictedLoss, predictedYield } from './predicted-figure';
import { predictionGround } from './prediction-ground';
import { jointOf, settleChoice } from './settle-choice';
import type { Raw, SiteRecords } from './site-records';

type Ask = {
  readonly mix: SiteMix;
  readonly cell: Cell;
  readonly kinds: Readonly<Record<string, MethodKind>>;
  /** Raw figures of a method in the whole network. */
  readonly rawOf: (method: string) => Raw;
  readonly records: SiteRecords;
  readonly usualUnits: number;
  readonly loss: Predicted | undefined;
  readonly yields: Predicted | undefined;
  readonly costOf: MethodCosts;
  readonly filter: ComparisonFilter;
  readonly asOf: string;
};

/** What a site could do next with one species and material: each method, which one does best, and which would teach most. */
export function nextChoice(ask: Ask): NextChoice {
  const { mix, cell, usualUnits } = ask;
  const { speciesId, materialId } = mix;
  const outlooks = mix.methods.flatMap((method) =>
    cell.methods.includes(method.methodId) ? outlookOf(ask, method) : [],
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

function outlookOf(ask: Ask, { methodId, verdict, reasons }: SiteMix['methods'][number]): Outlook[] {
  const kind = ask.kinds[methodId];
  if (verdict === 'unsuited' || kind === undefined) return [];
  const { cell, usualUnits, records, filter, asOf } = ask;
  const { siteId, speciesId, materialId } = cell;
  const ofMix = { ...filter, method: methodId, site: siteId, species: speciesId, material: materialId };
  const batches = records.of(methodId);
  const same = batches.filter(
    ({ facts }) => facts.speciesId === speciesId && facts.materialId === materialId && !facts.mixedMaterial,
  );
  const own = compareShown(same, ofMix, asOf);
  const [network, site] = [ask.rawOf(methodId), records.rawOf(methodId)];
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
      siteBatches: batches.filter(({ contamination }) => contamination.kind === 'counted').length,
      mixBatches: own.contamination.n.batches,
      loss: loss.figure,
      units: loss.units,
      yield: predictedYield(ground.yield, ask.yields?.of(cell, methodId)),
      ownLoss: own.contamination,
      ownYield: own.yield,
      cost: ask.costOf(methodId, siteId),
    },
  ];
}
