import type { Answer } from './answer';
import { assumedMoisturePercent, type MoistComponent } from './assumed-moisture';
import {
  type BatchDryMass,
  dryMassFromComponents,
  dryMassFromFilled,
  type KnownMoisture,
} from './batch-dry-mass';
import { addDays } from './calendar-date';
import { logDryGramsFromGreen, logDryGramsFromVolume } from './log-dry-mass';
import { logVolumeCubicMetres } from './log-volume';
import type { ComponentRoleKind, ContainerKind, DryMassOrigin, MoistureSource } from './vocabulary';

export type DerivedComponent = MoistComponent & {
  readonly role: ComponentRoleKind;
  readonly materialId: string;
  readonly methodId: string;
};

/** What a batch is worked out from: what was typed, with its lots, methods and window looked up. */
export type BatchFacts = {
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly inoculatedOn: string;
  readonly components: readonly DerivedComponent[];
  readonly spawnGrams: readonly (number | null)[];
  /** Mass filled of the whole batch without spawn, grams. */
  readonly filledGrams: number | null;
  readonly moisture: { readonly source: MoistureSource; readonly percent: number | null };
  /** Of one log, means; null for what is not known. */
  readonly log: {
    readonly woodCode: number | null;
    readonly diameterMm: number | null;
    readonly lengthMm: number | null;
    readonly greenGrams: number | null;
  };
  readonly window: { readonly contaminationDays: number; readonly yieldDays: number };
};

/** The columns of a batch that are never typed. */
export type DerivedBatch = {
  readonly methodId: string | null;
  readonly mixedMethod: boolean;
  readonly materialId: string | null;
  readonly mixedMaterial: boolean;
  readonly wetGrams: number | null;
  readonly moisturePercent: number | null;
  readonly moistureSource: MoistureSource;
  readonly dryMassFrom: DryMassOrigin;
  readonly dryGrams: number | null;
  readonly drySupplementGrams: number;
  readonly dryAssumed: boolean;
  readonly spawnGrams: number | null;
  readonly contaminationAssessedOn: string;
  readonly yieldAssessedOn: string;
};

function onlyOne(ids: readonly string[]): { id: string | null; mixed: boolean } {
  const distinct = new Set(ids);
  return { id: distinct.size === 1 ? (ids[0] ?? null) : null, mixed: distinct.size > 1 };
}

/** The sum, or null as soon as one part is unknown or there is none: a part of a sum would mislead. */
function knownSum(parts: readonly (number | null)[]): number | null {
  if (parts.length === 0) return null;
  return parts.reduce<number | null>((sum, part) => (sum === null || part === null ? null : sum + part), 0);
}

function logDryMass({ log, unitCount }: BatchFacts): Answer<BatchDryMass>[] {
  if (log.woodCode === null) return [];
  const ofAll = (one: Answer<number>, origin: DryMassOrigin): Answer<BatchDryMass> =>
    one.kind === 'value'
      ? {
          kind: 'value',
          value: {
            dryGrams: Math.round(one.value * unitCount),
            drySupplementGrams: 0,
            origin,
            assumed: false,
          },
        }
      : one;
  const answers: Answer<BatchDryMass>[] = [];
  if (log.greenGrams !== null)
    answers.push(ofAll(logDryGramsFromGreen(log.woodCode, log.greenGrams), 'log_green_mass'));
  if (log.diameterMm !== null && log.lengthMm !== null) {
    const volume = logVolumeCubicMetres(log.diameterMm, log.lengthMm);
    answers.push(
      ofAll(volume.kind === 'value' ? logDryGramsFromVolume(log.woodCode, volume.value) : volume, 'log_size'),
    );
  }
  return answers;
}

/** The first answer that assumes nothing, else the first that there is. */
function bestOf(answers: readonly Answer<BatchDryMass>[]): BatchDryMass | null {
  const values = answers.flatMap((one) =>
    one.kind === 'value' && one.value.dryGrams > 0 ? [one.value] : [],
  );
  return values.find((value) => !value.assumed) ?? values[0] ?? null;
}

/** Dry supplement, where it was weighed before treatment and its lot's moisture is known. */
function supplementGrams(components: readonly DerivedComponent[]): number {
  const supplements = components.filter(({ role }) => role === 'supplement');
  const parts = supplements.map(({ grams, massStage, asReceived }) =>
    grams === null || massStage === 'filled' || asReceived.percent === null
      ? null
      : grams * (1 - asReceived.percent / 100),
  );
  return Math.round(knownSum(parts) ?? 0);
}

/**
 * Works out method, material, moisture, dry mass and the days on which a batch is judged.
 *
 * Dry mass has two roads, never crossed: the mass filled with the batch's own moisture at filling, or the masses
 * before treatment with each lot's moisture as received (29.33 kg filled at 70 % is 8.80 kg dry; at the lot's 12 %
 * it would read 25.8). Where both are open, one that assumes nothing wins, else the mass filled. Logs: green mass,
 * then size, by the tree's table. Methods of all components but additives count; the material is that of the
 * substrate alone.
 */
export function deriveBatch(facts: BatchFacts): DerivedBatch {
  const counted = facts.components.filter(({ role }) => role !== 'additive');
  const method = onlyOne(counted.map(({ methodId }) => methodId));
  const material = onlyOne(
    counted.filter(({ role }) => role === 'substrate').map(({ materialId }) => materialId),
  );
  const assumedPercent = facts.moisture.source === 'assumed' ? assumedMoisturePercent(counted) : null;
  const percent = facts.moisture.source === 'measured' ? facts.moisture.percent : assumedPercent;
  const moisture: KnownMoisture = { percent, source: percent === null ? 'none' : facts.moisture.source };
  const allFilled = counted.every(({ massStage }) => massStage === 'filled');
  const wetGrams = facts.filledGrams ?? (allFilled ? knownSum(counted.map(({ grams }) => grams)) : null);
  const dry = bestOf([
    ...(facts.containerKind === 'log' ? logDryMass(facts) : []),
    dryMassFromFilled(wetGrams, moisture),
    counted.some(({ massStage }) => massStage === 'filled')
      ? { kind: 'cannot-compute', reason: 'mass-before-treatment-missing', values: {} }
      : dryMassFromComponents(counted),
  ]);
  const dryGrams = dry?.dryGrams ?? null;
  const supplement =
    dry?.origin === 'mass_before_treatment' ? dry.drySupplementGrams : supplementGrams(counted);
  return {
    methodId: method.id,
    mixedMethod: method.mixed,
    materialId: material.id,
    mixedMaterial: material.mixed,
    wetGrams,
    moisturePercent: moisture.percent,
    moistureSource: moisture.source,
    dryMassFrom: dry?.origin ?? 'none',
    dryGrams,
    drySupplementGrams: dryGrams === null ? 0 : Math.min(supplement, dryGrams),
    dryAssumed: dry?.assumed ?? false,
    spawnGrams: knownSum(facts.spawnGrams),
    contaminationAssessedOn: addDays(facts.inoculatedOn, facts.window.contaminationDays),
    yieldAssessedOn: addDays(facts.inoculatedOn, facts.window.yieldDays),
  };
}
