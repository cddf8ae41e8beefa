import type { Actor } from '@/lib/access/actor';
import { addDays } from '@/lib/growing/calendar-date';
import { keepFile } from '@/lib/intake/table/keep-file';
import { startJob } from '@/lib/intake/table/start-job';

const head = ['Lot', 'Material', 'Received on', 'Source', 'Weight (kg)', 'Moisture %'];

/** A coordinator's list of straw from before the network kept records here: understood and checked, not added yet. */
export async function bringTable(coordinator: Actor, today: string): Promise<void> {
  const day = (ago: number) => addDays(today, -ago);
  const rows = [
    head,
    ['OLD-STRAW-1', 'Wheat straw', day(1_130), 'Elder Bank Farm', '182,5', '11'],
    ['OLD-STRAW-2', 'Wheat straw', day(1_040), 'Elder Bank Farm', '160', '12,5'],
    ['OLD-STRAW-3', 'barley straw from the show', day(1_010), 'Larkmoor show', '75', ''],
    ['OLD-STRAW-4', 'Wheat straw', 'last autumn', 'Elder Bank Farm', '140', '12'],
  ];
  const table = new TextEncoder().encode(rows.map((row) => row.join(';')).join('\r\n'));
  const asked = { kind: 'substrate_lots', siteId: null, fileName: 'straw-before-records.csv' };
  const kept = await keepFile(coordinator, asked, table);
  if (kept.kind !== 'ok') throw new Error(`the table was not kept: ${JSON.stringify(kept)}`);
  const job = await startJob(coordinator, kept.value.id, 'check');
  if (job.kind !== 'ok') throw new Error(`the table was not checked: ${JSON.stringify(job)}`);
  await job.value.finished;
}
