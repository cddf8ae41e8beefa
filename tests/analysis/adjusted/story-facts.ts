import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import { assessmentWindowDefaults } from '@/lib/growing/assessment-window-defaults';
import { addDays } from '@/lib/growing/calendar-date';
import { planStory } from '@/seed/plan/plan-story';
import type { PlannedBatch } from '@/seed/plan/story-plan';

export type StoryBatch = { readonly facts: BatchFacts; readonly spawnLot: string };

/** The demo's batches as the database would add them up, without a database. Ids are the story's own codes. */
export function storyFacts(today: string): StoryBatch[] {
  return planStory(today).batches.map((batch, index) => ({
    facts: factsOf(batch, `batch-${String(index).padStart(4, '0')}`),
    spawnLot: batch.spawnLotCode,
  }));
}

function factsOf(batch: PlannedBatch, id: string): BatchFacts {
  const window = assessmentWindowDefaults.find(
    ({ speciesCode, container }) => speciesCode === batch.speciesCode && container === batch.container,
  );
  const { inoculatedOn, findings, weighings } = batch;
  const assessedOn = window ? addDays(inoculatedOn, window.contaminationDays) : null;
  const yieldOn = window ? addDays(inoculatedOn, window.yieldDays) : null;
  const units = (some: typeof findings) => some.reduce((sum, one) => sum + one.units, 0);
  const grams = (some: typeof weighings) => some.reduce((sum, one) => sum + one.grams, 0);
  const inTime = weighings.filter(({ date }) => yieldOn !== null && date <= yieldOn);
  const looked = [...batch.looks, ...findings.map(({ date }) => date)].sort().at(-1) ?? null;
  const moisture = batch.moisturePercent ?? (batch.moistureSource === 'assumed' ? 65 : null);
  return {
    id,
    siteId: batch.siteCode,
    speciesId: batch.speciesCode,
    containerKind: batch.container,
    methodId: batch.method,
    mixedMethod: false,
    mixedMaterial: false,
    materialId: batch.materialCode,
    unitCount: batch.unitCount,
    inoculatedOn,
    closedOn: batch.closedOn,
    closedAsLost: false,
    noHarvest: batch.closedOn === null ? null : batch.notWeighed ? 'not_weighed' : 'none_picked',
    voided: false,
    secondLife: false,
    contaminationAssessedOn: assessedOn,
    yieldAssessedOn: yieldOn,
    dryGrams: batch.wetGrams === null || moisture === null ? null : (batch.wetGrams * (100 - moisture)) / 100,
    dryAssumed: batch.moistureSource === 'assumed',
    bedAreaCm2: batch.bedAreaCm2,
    contaminatedByWindowEnd: units(findings.filter(({ date }) => assessedOn !== null && date <= assessedOn)),
    contaminatedAtAnyTime: units(findings),
    lostClean: batch.lost?.units ?? 0,
    lastInspectedOn: looked,
    freshGramsByYieldDay: grams(inTime),
    freshGramsLater: grams(weighings) - grams(inTime),
    weighings: weighings.length,
    anyTrimmed: false,
    anyAsPicked: true,
    anyShared: false,
    runIds: batch.runKey === null ? [] : [batch.runKey],
    runMissing: false,
  };
}
