import type { Actor } from '@/lib/access/actor';
import { keepFile } from '@/lib/intake/table/keep-file';
import { startJob } from '@/lib/intake/table/start-job';

const rows = [
  ['Name', 'E-mail', 'Role', 'Sites'],
  ['Hollis Fenwick', 'hollis@larkmoor.example', 'member', 'Kestrel Yard'],
  ['Oriel Sand', 'oriel@larkmoor.example', 'member', 'Mill Lane Garden, Quarry Farm'],
];

/** Two growers who are to join after the winter: invited by a coordinator's list, their links not handed over yet. */
export async function bringPeople(coordinator: Actor): Promise<void> {
  const table = new TextEncoder().encode(rows.map((row) => row.join(';')).join('\r\n'));
  const kept = await keepFile(
    coordinator,
    { kind: 'people', siteId: null, fileName: 'new-growers.csv' },
    table,
  );
  if (kept.kind !== 'ok') throw new Error(`the list of people was not kept: ${JSON.stringify(kept)}`);
  for (const mode of ['check', 'add'] as const) {
    const job = await startJob(coordinator, kept.value.id, mode);
    if (job.kind !== 'ok') throw new Error(`${mode} of the list of people: ${JSON.stringify(job)}`);
    await job.value.finished;
  }
}
