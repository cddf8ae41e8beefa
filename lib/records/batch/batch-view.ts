import type {
  BedLayerMaterial,
  ComponentRole,
  ContainerKind,
  DryMassFrom,
  MassStage,
  MoistureSource,
  SecondLifeWay,
} from '@/lib/database/generated/enums';
import { asCalendarDate } from '../fields/stored-date';
import type { BatchRow } from './batch-include';

export type BedLayerView = {
  readonly id: string;
  readonly laidOn: string;
  readonly material: BedLayerMaterial;
  readonly thicknessMm: number | null;
  readonly millilitres: number | null;
};

export type LocalName = { readonly en: string; readonly es: string };

export type ComponentView = {
  readonly lotId: string;
  readonly lotCode: string;
  readonly material: LocalName;
  readonly methodId: string;
  readonly method: LocalName;
  readonly runId: string | null;
  readonly runCode: string | null;
  readonly role: ComponentRole;
  readonly grams: number | null;
  readonly massStage: MassStage;
};

/** A batch as it was started, corrected since; masses in whole grams, moisture in percent of the wet mass. */
export type BatchView = {
  readonly id: string;
  readonly revision: number;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  /** The site has left the network: its records stay as they are. */
  readonly siteLeft: boolean;
  readonly timeZone: string;
  readonly speciesId: string;
  readonly species: LocalName & { readonly scientific: string };
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly inoculatedOn: string;
  readonly startedById: string | null;
  readonly method: LocalName | null;
  readonly mixedMethod: boolean;
  readonly material: LocalName | null;
  readonly mixedMaterial: boolean;
  readonly components: readonly ComponentView[];
  readonly spawn: readonly {
    readonly lotId: string;
    readonly lotCode: string;
    readonly grams: number | null;
  }[];
  readonly wetGrams: number | null;
  readonly moisturePercent: number | null;
  readonly moistureSource: MoistureSource;
  readonly dryMassFrom: DryMassFrom;
  readonly dryGrams: number | null;
  readonly drySupplementGrams: number;
  readonly dryAssumed: boolean;
  readonly spawnGrams: number | null;
  readonly bedAreaCm2: number | null;
  readonly logWoodCode: number | null;
  readonly logDiameterMm: number | null;
  readonly logLengthMm: number | null;
  readonly logGreenGrams: number | null;
  readonly secondLife: boolean;
  readonly secondLifeWay: SecondLifeWay | null;
  /** Of a bed, from the ground up. */
  readonly layers: readonly BedLayerView[];
  readonly closedOn: string | null;
  readonly note: string | null;
  readonly voidReason: string | null;
};

function named(row: { nameEn: string; nameEs: string }): LocalName {
  return { en: row.nameEn, es: row.nameEs };
}

export function batchView(row: BatchRow): BatchView {
  const { wetGrams, moistureSource, dryMassFrom, dryGrams, drySupplementGrams, dryAssumed, spawnGrams } = row;
  const { bedAreaCm2, logWoodCode, logDiameterMm, logLengthMm, logGreenGrams } = row;
  return {
    ...{ id: row.id, revision: row.revision, code: row.code, note: row.note, secondLife: row.secondLife },
    ...{ wetGrams, moistureSource, dryMassFrom, dryGrams, drySupplementGrams, dryAssumed, spawnGrams },
    ...{ bedAreaCm2, logWoodCode, logDiameterMm, logLengthMm, logGreenGrams },
    siteId: row.siteId,
    siteName: row.site.name,
    siteLeft: row.site.leftAt !== null,
    timeZone: row.site.timeZone,
    secondLifeWay: row.secondLifeWay,
    layers: row.layers.map(({ id, laidOn, material, thicknessMm, millilitres }) => ({
      ...{ id, material, thicknessMm, millilitres },
      laidOn: asCalendarDate(laidOn),
    })),
    speciesId: row.speciesId,
    species: { ...named(row.species), scientific: row.species.scientificName },
    containerKind: row.containerKind,
    unitCount: row.unitCount,
    inoculatedOn: asCalendarDate(row.inoculatedOn),
    startedById: row.startedById,
    method: row.method === null ? null : named(row.method),
    mixedMethod: row.mixedMethod,
    material: row.material === null ? null : named(row.material),
    mixedMaterial: row.mixedMaterial,
    components: row.components.map((component) => ({
      lotId: component.substrateLotId,
      lotCode: component.lot.code,
      material: named(component.lot.material),
      methodId: component.methodId,
      method: named(component.method),
      runId: component.treatmentRunId,
      runCode: component.run?.code ?? null,
      role: component.role,
      grams: component.grams,
      massStage: component.massStage,
    })),
    spawn: row.spawnShares.map(({ lot, grams }) => ({ lotId: lot.id, lotCode: lot.code, grams })),
    moisturePercent: row.moisturePercent?.toNumber() ?? null,
    closedOn: row.closedOn === null ? null : asCalendarDate(row.closedOn),
    voidReason: row.voidedAt === null ? null : (row.voidReason ?? ''),
  };
}
