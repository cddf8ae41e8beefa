import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctTreatment } from '@/lib/records/treatment/correct-treatment.command';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { correctTreatmentInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);

const soak = (changes: object = {}) => ({
  siteId: people.millLane,
  methodId: stock.lime,
  startedAt: '2026-05-20T08:00:00Z',
  water: { text: '50', unit: 'L' },
  lime: { text: '250', unit: 'g' },
  load: { text: '6', unit: 'kg' },
  ...changes,
});
const start = (raw: object) =>
  runAs(people.member, startTreatmentInput, startTreatment, raw, { now: testDay });
const read = (id: string) => readAs(people.member, (context) => getTreatment(context, id, testDay));

async function started(changes: object = {}): Promise<string> {
  const result = await start(soak(changes));
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

describe('a treatment run', () => {
  it('keeps the mass of the material put in, beside its water and lime', async () => {
    expect(await read(await started())).toMatchObject({
      loadGrams: 6_000,
      waterMillilitres: 50_000,
      limeGrams: 250,
    });
    expect(await read(await started({ load: '' }))).toMatchObject({ loadGrams: null });
  });

  it('has lime only when it is a lime soak', async () => {
    expect(await start(soak({ methodId: stock.hotWater }))).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'lime', code: 'lime-soak-only' }],
    });
    expect((await start(soak({ methodId: stock.hotWater, lime: '' }))).kind).toBe('ok');
  });

  it('refuses a load of nothing', async () => {
    expect(await start(soak({ load: { text: '0', unit: 'kg' } }))).toMatchObject({ kind: 'invalid' });
  });

  it('has its load corrected with a reason, and the history keeps the old one', async () => {
    const id = await started();
    const before = await read(id);
    const raw = soak({ id, revision: before?.revision, reason: 'weighed again', load: '7 kg' });
    const corrected = await runAs(people.member, correctTreatmentInput, correctTreatment, raw, {
      now: testDay,
      reason: 'weighed again',
    });
    expect(corrected.kind).toBe('ok');
    expect((await read(id))?.loadGrams).toBe(7_000);
    const history = await historyOf(people.coordinator, id);
    expect(history.at(-1)).toMatchObject({ reason: 'weighed again', oldValues: { load_grams: 6_000 } });
  });
});
