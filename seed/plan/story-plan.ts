import type {
  ContainerKind,
  ContaminationSignKind,
  MethodKind,
  MoistureSource,
} from '@/lib/growing/vocabulary';
import type { PlannedSpawnLot } from './plan-spawn-lots';

export type PlannedReading = {
  readonly minutes: number;
  readonly celsius: number | null;
  readonly ph: number | null;
};

export type PlannedRun = {
  readonly key: string;
  readonly siteCode: string;
  readonly method: MethodKind;
  readonly date: string;
  readonly minutes: number;
  readonly readings: readonly PlannedReading[];
  readonly logit: number;
};

export type PlannedFinding = {
  readonly date: string;
  readonly units: number;
  readonly sign: ContaminationSignKind;
  readonly cropping: boolean;
};

export type PlannedWeighing = { readonly date: string; readonly flush: number; readonly grams: number };

/** One batch of the story, everything decided, nothing yet recorded. Dates are calendar dates; masses grams. */
export type PlannedBatch = {
  readonly siteCode: string;
  readonly speciesCode: string;
  readonly container: ContainerKind;
  readonly materialCode: string;
  readonly method: MethodKind;
  readonly runKey: string | null;
  readonly spawnLotCode: string;
  readonly inoculatedOn: string;
  readonly unitCount: number;
  readonly wetGrams: number | null;
  readonly spawnGrams: number;
  readonly moistureSource: MoistureSource;
  readonly moisturePercent: number | null;
  readonly bedAreaCm2: number | null;
  readonly looks: readonly string[];
  readonly findings: readonly PlannedFinding[];
  readonly colonisedOn: string | null;
  readonly weighings: readonly PlannedWeighing[];
  readonly lost: { readonly date: string; readonly units: number } | null;
  readonly closedOn: string | null;
  readonly notWeighed: boolean;
};

export type StoryPlan = {
  readonly lots: readonly PlannedSpawnLot[];
  readonly runs: readonly PlannedRun[];
  readonly batches: readonly PlannedBatch[];
};
