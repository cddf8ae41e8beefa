import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { suitabilityDefaults } from '@/lib/growing/suitability-defaults';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { addSuitability } from '@/lib/records/settings/add-suitability.command';
import { changeSuitability } from '@/lib/records/settings/change-suitability.command';
import { listSuitability } from '@/lib/records/settings/list-suitability.query';
import { addSuitabilityInput, changeSuitabilityInput } from '@/lib/records/settings/settings.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const said = { verdict: 'unsuited', reasonEn: 'Too dry here.', reasonEs: 'Demasiado seco aquí.' };

const rows = () => readAs(people.coordinator, async (c) => (await listSuitability(c)).rows);
async function rowOf(pair: object) {
  const found = (await rows()).find((row) =>
    Object.entries(pair).every(([name, value]) => row[name as keyof typeof row] === value),
  );
  if (!found) throw new Error(`no row of ${JSON.stringify(pair)}`);
  return found;
}
const change = (raw: object, actor = people.coordinator) =>
  runAs(actor, changeSuitabilityInput, changeSuitability, raw, { reason: 'our own crops' });
const add = (raw: object, actor = people.coordinator) =>
  runAs(actor, addSuitabilityInput, addSuitability, raw);
const start = (changes: object) =>
  runAs(
    people.member,
    startBatchInput,
    startBatch,
    { ...twentyBags(people, stock), ...changes },
    { now: testDay },
  );

describe('the table of what suits what', () => {
  it('is given to a new network whole', async () => {
    expect(await rows()).toHaveLength(suitabilityDefaults.length);
  });

  it('decides what is asked about a batch: a material that suits until the network says otherwise', async () => {
    expect((await start({})).kind).toBe('ok');
    const straw = await rowOf({ speciesId: stock.oyster, materialKind: 'straw' });
    const changed = await change({
      id: straw.id,
      revision: straw.revision,
      reason: 'our own crops',
      ...said,
    });
    expect(changed).toMatchObject({ kind: 'ok', value: { speciesId: stock.oyster } });
    expect(await start({})).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'material-unsuited', values: { reason: 'Too dry here.' } }],
    });
    const history = await historyOf(people.coordinator, straw.id);
    expect(history.at(-1)).toMatchObject({ action: 'changed', reason: 'our own crops' });
    expect(history.at(-1)?.oldValues).toMatchObject({ verdict: 'suits' });
    const back = await rowOf({ id: straw.id });
    await change({ ...said, id: straw.id, revision: back.revision, reason: 'again', verdict: 'suits' });
    expect((await start({})).kind).toBe('ok');
  });

  it('asks about a pair of material and method whatever the species', async () => {
    expect(await add({ ...said, materialKind: 'straw', methodKind: 'hot_water_bath' })).toMatchObject({
      kind: 'ok',
      value: { speciesId: null },
    });
    expect(await start({})).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'material-method-unsuited' }],
    });
    const row = await rowOf({ materialKind: 'straw', methodKind: 'hot_water_bath' });
    await change({ ...said, id: row.id, revision: row.revision, reason: 'again', verdict: 'possible' });
    expect((await start({})).kind).toBe('ok');
  });

  it('names exactly two things, each pair once', async () => {
    expect(await add({ ...said, materialKind: 'straw' })).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'name-two' }],
    });
    expect(
      await add({ ...said, speciesId: stock.oyster, materialKind: 'straw', methodKind: 'steam' }),
    ).toMatchObject({ kind: 'invalid', errors: [{ code: 'name-two' }] });
    expect(await add({ ...said, speciesId: stock.oyster, materialKind: 'straw' })).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'already-there' }],
    });
  });

  it('is changed by the coordinator of the network alone, and by the revision that was read', async () => {
    const row = await rowOf({ speciesId: stock.shiitake, methodKind: 'steam' });
    const raw = { ...said, id: row.id, revision: row.revision, reason: 'no' };
    expect(await change(raw, people.member)).toEqual({ kind: 'not-found' });
    expect(await change(raw, people.stranger)).toEqual({ kind: 'not-found' });
    expect(await change({ ...raw, revision: row.revision + 1 })).toEqual({
      kind: 'conflict',
      current: row.revision,
    });
  });
});
