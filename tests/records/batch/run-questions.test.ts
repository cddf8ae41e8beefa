import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { addReadingInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const { member, millLane } = people;

const at = (time: string) => `2026-03-31T${time}:00Z`;

/** A run of 8:00 to 10:00 with readings of the middle of the load. */
async function bath(readings: readonly [string, number][], changes: object = {}): Promise<string> {
  const run = await runAs(
    member,
    startTreatmentInput,
    startTreatment,
    {
      siteId: millLane,
      methodId: stock.hotWater,
      startedAt: at('08:00'),
      endedAt: at('10:00'),
      ...changes,
    },
    { now: testDay },
  );
  if (run.kind !== 'ok') throw new Error(JSON.stringify(run));
  for (const [time, celsius] of readings) {
    const raw = { treatmentRunId: run.value.id, readAt: at(time), place: 'load_middle', celsius };
    const read = await runAs(member, addReadingInput, addReading, raw, { now: testDay });
    if (read.kind !== 'ok') throw new Error(JSON.stringify(read));
  }
  return run.value.id;
}

const bags = (runId: string) => {
  const raw = twentyBags(people, stock);
  return { ...raw, components: raw.components.map((one) => ({ ...one, treatment: `run:${runId}` })) };
};
const start = (runId: string, confirmed: readonly string[] = []) =>
  runAs(member, startBatchInput, startBatch, bags(runId), { now: testDay, confirmed: new Set(confirmed) });
const asked = async (runId: string) => {
  const result = await start(runId);
  return result.kind === 'confirm' ? result.questions.map(({ code }) => code) : result.kind;
};

const held: readonly [string, number][] = [
  ['08:30', 70],
  ['08:55', 71],
  ['09:20', 70],
  ['09:40', 70],
];

describe('a batch from a treatment run', () => {
  it('is started without a question when the run kept to its window', async () =>
    expect(await asked(await bath(held))).toBe('ok'));

  it('is asked about when the run was cut short, and started on a yes', async () => {
    const run = await bath([
      ['08:30', 70],
      ['08:50', 71],
      ['09:10', 40],
      ['09:58', 30],
    ]);
    expect(await asked(run)).toEqual(['run-cut-short']);
    expect((await start(run, ['run-cut-short'])).kind).toBe('ok');
  });

  it('is asked about when the load was never hot enough', async () =>
    expect(
      await asked(
        await bath([
          ['08:30', 50],
          ['09:55', 60],
        ]),
      ),
    ).toEqual(['run-never-reached']));

  it('is asked about when the load was too warm for spawn', async () =>
    expect(await asked(await bath(held, { loadCelsiusAtSpawning: 41 }))).toEqual(['load-too-warm']));

  it('is not asked about when nobody took a reading', async () =>
    expect(await asked(await bath([]))).toBe('ok'));

  it('is not asked about again when it is corrected', async () => {
    const run = await bath([
      ['08:30', 50],
      ['09:55', 60],
    ]);
    const started = await start(run, ['run-never-reached']);
    if (started.kind !== 'ok') throw new Error(JSON.stringify(started));
    const raw = { ...bags(run), unitCount: 21, id: started.value.id, revision: 1, reason: 'counted again' };
    const corrected = await runAs(member, correctBatchInput, correctBatch, raw, { now: testDay });
    expect(corrected.kind).toBe('ok');
  });
});
