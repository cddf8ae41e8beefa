import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { allocateTreatment } from '@/lib/records/treatment/allocate-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import {
  addReadingInput,
  allocateTreatmentInput,
  startTreatmentInput,
} from '@/lib/records/treatment/treatment.input';
import { arrange, type World } from '../access/world';

/** What leads from Mill Lane to Quarry Farm: a run made at the one for the other, and spent bags that went on there. */
export async function lendToQuarry({ people, stock, batch }: World): Promise<{ run: string; later: string }> {
  const { coordinator, millLane, quarry } = people;
  const run = await arrange(coordinator, startTreatmentInput, startTreatment, {
    siteId: millLane,
    methodId: stock.hotWater,
    startedAt: '2026-04-01T08:00:00Z',
  });
  await arrange(coordinator, addReadingInput, addReading, {
    treatmentRunId: run.id,
    readAt: '2026-04-01T09:00:00Z',
    place: 'water',
    celsius: { text: '70', unit: 'celsius' },
  });
  await arrange(coordinator, allocateTreatmentInput, allocateTreatment, {
    treatmentRunId: run.id,
    siteId: quarry,
  });
  const later = await arrange(coordinator, startSecondLifeInput, startSecondLife, {
    siteId: quarry,
    speciesId: stock.oyster,
    containerKind: 'bed',
    unitCount: 1,
    inoculatedOn: '2026-05-18',
    moistureSource: 'none',
    bedArea: { text: '2', unit: 'm2' },
    sources: [{ batchId: batch, units: 3 }],
  });
  return { run: run.id, later: later.id };
}
