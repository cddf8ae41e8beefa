import { clusteredProportion } from '@/lib/stats/clustered/clustered-proportion';
import { kornGraubardInterval } from '@/lib/stats/clustered/korn-graubard-interval';
import { logitInterval } from '@/lib/stats/clustered/logit-interval';
import { raoScottInterval } from '@/lib/stats/clustered/rao-scott-interval';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { type CoverageRow, outcomeOf, type Setting } from './calibration-row';
import { clusterCounts } from './cluster-samples';
import { coverageStudy } from './coverage-study';

type Answer = {
  kind: string;
  low?: number;
  high?: number;
  interval?: { kind: string; low?: number; high?: number };
};
type Rows = { events: number[]; trials: number[]; level: number };

const methods: readonly { readonly name: string; readonly limits: (rows: Rows) => Answer }[] = [
  { name: 'score averaged over the correlation (shipped)', limits: clusteredProportion },
  { name: 'logit, t on clusters - 1 (for comparison)', limits: logitInterval },
  { name: 'Korn-Graubard (for comparison)', limits: kornGraubardInterval },
  {
    name: 'Rao-Scott, design effect at least 1 (for comparison)',
    limits: (rows) => raoScottInterval({ ...rows, floor: true }),
  },
];

/** Intervals of the proportion of units of unequal, correlated clusters. */
export function clusteredProportionCalibration(replicates: number): CoverageRow[] {
  return methods.flatMap(({ name, limits }, index) =>
    coverageStudy(
      {
        method: `proportion of clustered units, ${name}`,
        replicates,
        seed: 40 + index,
      },
      (random: SeededRandom, setting: Setting) => {
        const counts = clusterCounts(random, setting);
        const answer = limits({
          events: counts.map(({ events }) => events),
          trials: counts.map(({ units }) => units),
          level: 0.95,
        });
        return outcomeOf(setting.rate, answer.interval ?? answer);
      },
    ),
  );
}
