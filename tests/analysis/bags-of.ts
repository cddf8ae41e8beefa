import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import type { ComparisonFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { type JudgedBatch, judgeBatches } from '@/lib/analysis/comparison/judged-batch';
import type { CalendarDate } from '@/lib/growing/calendar-date';

export const millLane = 'mill-lane';
export const quarry = 'quarry';
export const hotWater = 'hot-water';
export const lime = 'lime';

/** Twenty oyster bags of 1 April, judged on 29 April and for yield on 30 June, looked at in time, nothing wrong. */
export const twentyBags: BatchFacts = {
  id: 'batch',
  siteId: millLane,
  speciesId: 'oyster',
  containerKind: 'bag',
  methodId: hotWater,
  mixedMethod: false,
  mixedMaterial: false,
  materialId: 'straw',
  unitCount: 20,
  inoculatedOn: '2026-04-01',
  closedOn: null,
  closedAsLost: false,
  noHarvest: null,
  voided: false,
  secondLife: false,
  contaminationAssessedOn: '2026-04-29',
  yieldAssessedOn: '2026-06-30',
  dryGrams: 10_000,
  dryAssumed: false,
  bedAreaCm2: null,
  contaminatedByWindowEnd: 0,
  contaminatedAtAnyTime: 0,
  lostClean: 0,
  lastInspectedOn: '2026-04-29',
  freshGramsByYieldDay: 6_000,
  freshGramsLater: 0,
  weighings: 2,
  anyTrimmed: false,
  anyAsPicked: true,
  anyShared: false,
  runIds: [],
  runMissing: false,
};

export function bags(changes: Partial<BatchFacts> = {}): BatchFacts {
  return { ...twentyBags, ...changes };
}

/** Bags with so many contaminated by the window's end, numbered. */
export function contaminatedBags(counts: readonly number[], changes: Partial<BatchFacts> = {}): BatchFacts[] {
  return counts.map((count, index) =>
    bags({
      id: `batch-${index}`,
      contaminatedByWindowEnd: count,
      contaminatedAtAnyTime: count,
      ...changes,
    }),
  );
}

export const oysterBags: ComparisonFilter = {
  from: '2026-01-01',
  to: '2026-12-31',
  species: 'oyster',
  container: 'bag',
  material: 'straw',
  method: undefined,
  site: undefined,
};

/** The batches as they are judged on a day, the same day at both sites. */
export function judgedOn(facts: readonly BatchFacts[], today: CalendarDate = '2026-12-31'): JudgedBatch[] {
  const sites = new Set(facts.map(({ siteId }) => siteId));
  return judgeBatches(facts, new Map([...sites].map((site) => [site, today])));
}
