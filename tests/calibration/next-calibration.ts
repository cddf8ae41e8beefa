import { contaminationRequest, countedBatches } from '@/lib/analysis/adjusted/contamination-request';
import { efficiencyRequest, weighedBatches } from '@/lib/analysis/adjusted/efficiency-request';
import { chooseNext } from '@/lib/analysis/next-question/choose-next';
import { predictCells } from '@/lib/analysis/next-question/predict-cells';
import { predictCount } from '@/lib/stats/mixed/binomial/predict-count';
import { fitHere } from '../analysis/adjusted/story-data';
import { nextUnits, type SimulatedTruth, simulatedNext } from '../analysis/next-question/simulated-next';
import type { LevelRow } from './calibration-row';
import { noisePercent } from './rejection-row';

type NetworkPlan = Omit<Parameters<typeof simulatedNext>[0], 'seed'>;

const networks: readonly NetworkPlan[] = [
  { sites: 14, batchesPerSite: 40, methodsPerSite: 2 },
  { sites: 10, batchesPerSite: 12, methodsPerSite: 3 },
  { sites: 4, batchesPerSite: 25, methodsPerSite: 2 },
  { sites: 10, batchesPerSite: 20, methodsPerSite: 2, lotPerSite: true },
];

type Tally = {
  held: Record<'loss used' | 'loss new' | 'yield used' | 'yield new', boolean[]>;
  /** Points of biological efficiency given up against the truly best method. */
  givenUp: Record<'chosen' | 'own' | 'any', number[]>;
};

/**
 * How often the limits of a site's next batch hold it, where the site has used the method and where it has not, and what
 * is given up against the truly best method: by the choice made, by the site's own raw yields, by any method.
 */
export async function nextCalibration(replicates: number): Promise<LevelRow[]> {
  const rows: LevelRow[] = [];
  for (const network of networks) {
    const tally: Tally = {
      held: { 'loss used': [], 'loss new': [], 'yield used': [], 'yield new': [] },
      givenUp: { chosen: [], own: [], any: [] },
    };
    for (let round = 0; round < replicates; round += 1)
      await addNetwork(tally, simulatedNext({ ...network, seed: 60_000 + round }));
    const { sites, batchesPerSite, methodsPerSite, lotPerSite = false }: NetworkPlan = network;
    const setting = `${sites} sites of ${batchesPerSite} batches, ${methodsPerSite} of 4 methods at each${lotPerSite ? ', one spawn lot of its own at each' : ''}`;
    for (const [what, held] of Object.entries(tally.held)) rows.push(heldRow(what, setting, held));
    const { chosen, own, any } = tally.givenUp;
    rows.push({
      method: 'given up against the truly best method',
      setting,
      stated: 'less than by the site’s own raw yields',
      found: `${mean(chosen).toFixed(1)} points of BE (own raw yields ${mean(own).toFixed(1)}, any method ${mean(any).toFixed(1)})`,
      holds: mean(chosen) < mean(own),
    });
  }
  return rows;
}

async function addNetwork({ held, givenUp }: Tally, truth: SimulatedTruth): Promise<void> {
  const cells = truth.sites.map((siteId) => ({
    siteId,
    speciesId: 'oyster',
    materialId: 'straw',
    season: null,
    methods: truth.methods,
  }));
  const levelledOut = { material: false, season: false };
  const options = { levelledOut, sites: 'partly' } as const;
  const counted = countedBatches(truth.batches);
  const weighed = weighedBatches(truth.batches);
  const loss = await predictCells(
    contaminationRequest(counted, options),
    counted,
    levelledOut,
    cells,
    fitHere,
  );
  const request = efficiencyRequest(weighed, { ...options, of: 'all' });
  const yields = await predictCells(request, weighed, levelledOut, cells, fitHere);
  for (const cell of cells) {
    for (const method of truth.methods) {
      const who = truth.used(cell.siteId, method) ? 'used' : 'new';
      const next = truth.nextBatch(cell.siteId, method);
      const one = loss?.of(cell, method);
      if (one?.kind === 'estimate' && one.method === 'binomial mixed model prediction') {
        const { logit, logitStandardError: standardDeviation } = one.group;
        const spread = { logit, standardDeviation, degreesOfFreedom: Number.POSITIVE_INFINITY };
        const { low, high } = predictCount({ units: nextUnits, ...spread, level: 0.95 });
        held[`loss ${who}`].push(low <= next.contaminated && next.contaminated <= high);
      }
      const other = yields?.of(cell, method);
      if (other?.kind === 'estimate' && other.method === 'linear mixed model prediction') {
        const { low, high } = other.observation.interval;
        held[`yield ${who}`].push(Math.max(0, low) <= next.bePercent && next.bePercent <= high);
      }
    }
    const together = yields?.together(cell);
    const verdict = together ? chooseNext({ ...together, by: 'yield' }) : undefined;
    if (verdict?.kind !== 'told') continue;
    const expected = new Map(truth.methods.map((method) => [method, truth.expectedBe(cell.siteId, method)]));
    const best = Math.max(...expected.values());
    const lost = (method: string) => best - (expected.get(method) ?? 0);
    givenUp.chosen.push(lost(verdict.leader));
    givenUp.own.push(lost(rawBest(truth, cell.siteId)));
    givenUp.any.push(mean(truth.methods.map(lost)));
  }
}

/** The method with the highest mean yield at the site so far. */
function rawBest({ batches, methods }: SimulatedTruth, siteId: string): string {
  const means = methods.map((method) => {
    const own = batches.filter((batch) => batch.siteId === siteId && batch.methodKey === method);
    return { method, value: own.length === 0 ? -1 : mean(own.map(({ bePercent }) => bePercent ?? 0)) };
  });
  return means.toSorted((a, b) => b.value - a.value)[0]?.method ?? '';
}

function heldRow(what: string, setting: string, held: readonly boolean[]): LevelRow {
  const percent = (100 * held.filter((one) => one).length) / Math.max(1, held.length);
  const [of, who] = what.split(' ');
  return {
    method: `${of} of the next batch, a method the site has ${who === 'used' ? 'used' : 'not used'}`,
    setting,
    stated: 'the limits hold it in 95 % or more',
    found: `${percent.toFixed(1)} %`,
    holds: percent >= 95 - noisePercent(5, held.length),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
}
