import { batchSpawnSum } from './batch-spawn-sum';
import { bedSum } from './bed-sum';
import { drySum } from './dry-sum';
import { heatSum } from './heat-sum';
import { limeSum } from './lime-sum';
import { materialSum } from './material-sum';
import { spawnSum } from './spawn-sum';
import { suitabilitySum } from './suitability-sum';
import type { SumAnswer, SumInput } from './sum-input';
import { volumeSum } from './volume-sum';
import { waterSum } from './water-sum';

const sums = {
  lime: limeSum,
  heat: heatSum,
  water: waterSum,
  spawn: spawnSum,
  bed: bedSum,
  volume: volumeSum,
  suitability: suitabilitySum,
  material: materialSum,
  dry: drySum,
  batchSpawn: batchSpawnSum,
} as const satisfies Record<string, (input: SumInput) => SumAnswer>;

export type SumKind = keyof typeof sums;

/** Works out sums from what a form holds; the same on the server, without script, and while it is typed. */
export function workOut(kinds: readonly SumKind[], input: SumInput): SumAnswer {
  const answers = kinds.map((kind) => sums[kind](input));
  const carry = answers.find((one) => one.carry !== undefined)?.carry;
  return { lines: answers.flatMap(({ lines }) => lines), ...(carry === undefined ? {} : { carry }) };
}
