import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { BatchEvents } from './batch-events';

/** One batch as the database's JSON gives it, in the order of the statement in `read-batch-rows.ts`. */
export type EncodedBatch = readonly [
  id: string,
  siteId: string,
  speciesId: string,
  containerKind: ContainerKind,
  methodId: string | null,
  mixedMethod: boolean,
  materialId: string | null,
  mixedMaterial: boolean,
  unitCount: number,
  inoculatedOn: string,
  closedOn: string | null,
  closedAsLost: boolean | null,
  noHarvest: 'none_picked' | 'not_weighed' | null,
  voided: boolean,
  secondLife: boolean,
  contaminationAssessedOn: string | null,
  yieldAssessedOn: string | null,
  dryGrams: number | null,
  dryAssumed: boolean,
  bedAreaCm2: number | null,
];

/** Nothing recorded is 0 of whatever is counted. */
export function decodePlainRow(row: EncodedBatch, events: BatchEvents): BatchFacts {
  const [id, siteId, speciesId, containerKind, methodId, mixedMethod, materialId, mixedMaterial] = row;
  const found = events.found.get(id);
  const lookedOn = events.looked.get(id)?.[1] ?? null;
  const weighed = events.weighed.get(id);
  const treated = events.treated.get(id);
  const freshGramsByYieldDay = weighed?.[1] ?? 0;
  return {
    id,
    siteId,
    speciesId,
    containerKind,
    methodId,
    mixedMethod,
    materialId,
    mixedMaterial,
    unitCount: row[8],
    inoculatedOn: row[9],
    closedOn: row[10],
    closedAsLost: row[11] ?? false,
    noHarvest: row[12],
    voided: row[13],
    secondLife: row[14],
    contaminationAssessedOn: row[15],
    yieldAssessedOn: row[16],
    dryGrams: row[17],
    dryAssumed: row[18],
    bedAreaCm2: row[19],
    contaminatedByWindowEnd: found?.[1] ?? 0,
    contaminatedAtAnyTime: found?.[2] ?? 0,
    lostClean: events.lost.get(id)?.[1] ?? 0,
    lastInspectedOn: later(found?.[3] ?? null, lookedOn),
    freshGramsByYieldDay,
    freshGramsLater: (weighed?.[2] ?? 0) - freshGramsByYieldDay,
    weighings: weighed?.[3] ?? 0,
    anyTrimmed: weighed?.[4] ?? false,
    anyAsPicked: weighed?.[5] ?? false,
    anyShared: weighed?.[6] ?? false,
    runIds: treated?.[1] ? treated[1].split(' ') : [],
    runMissing: treated?.[2] ?? false,
  };
}

function later(a: string | null, b: string | null): string | null {
  if (a === null || b === null) return a ?? b;
  return a > b ? a : b;
}
