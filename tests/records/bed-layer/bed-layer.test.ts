import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { addBedLayers } from '@/lib/records/bed-layer/add-bed-layers.command';
import { addBedLayersInput } from '@/lib/records/bed-layer/bed-layer.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let bed: string;

const mm = (text: string) => ({ text, unit: 'mm' });

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  const started = await runAs(
    people.member,
    startBatchInput,
    startBatch,
    {
      siteId: people.millLane,
      speciesId: stock.wineCap,
      containerKind: 'bed',
      unitCount: 1,
      inoculatedOn: '2026-04-01',
      components: [
        {
          lotId: stock.straw,
          treatment: `method:${stock.untreated}`,
          role: 'substrate',
          massStage: 'filled',
        },
      ],
      moistureSource: 'none',
      bedArea: { text: '2', unit: 'm2' },
      layers: [
        { material: 'cardboard', thickness: '', volume: '' },
        { material: 'spawn', thickness: '', volume: { text: '2', unit: 'L' } },
        { material: 'wood_chips', thickness: mm('50'), volume: '' },
        { material: '', thickness: { text: '', unit: 'mm' }, volume: { text: '', unit: 'L' } },
      ],
    },
    {
      now: testDay,
      confirmed: new Set(['material-unsuited', 'method-unsuited', 'material-method-unsuited']),
    },
  );
  if (started.kind !== 'ok') throw new Error(JSON.stringify(started));
  bed = started.value.id;
});

const layersOf = async (actor: Actor = people.member) =>
  (await readAs(actor, (context) => getBatch(context, bed, testDay)))?.batch.layers;
const add = (changes: object, actor: Actor = people.member) =>
  runAs(
    actor,
    addBedLayersInput,
    addBedLayers,
    { batchId: bed, laidOn: '2026-05-10', layers: [{ material: 'straw', thickness: mm('60') }], ...changes },
    { now: testDay },
  );

describe('the layers of a bed', () => {
  it('are kept from the ground up as they were typed, empty rows left out', async () => {
    expect(await layersOf()).toMatchObject([
      { material: 'cardboard', thicknessMm: null, millilitres: null, laidOn: '2026-04-01' },
      { material: 'spawn', thicknessMm: null, millilitres: 2_000 },
      { material: 'wood_chips', thicknessMm: 50, millilitres: null },
    ]);
  });

  it('grow on top, once however often it is posted', async () => {
    const id = newId();
    for (const _time of [1, 2]) expect(await add({ id })).toEqual({ kind: 'ok', value: { batchId: bed } });
    const layers = await layersOf();
    expect(layers?.length).toBe(4);
    expect(layers?.at(-1)).toMatchObject({ id, material: 'straw', thicknessMm: 60, laidOn: '2026-05-10' });
  });

  it('can be voided one by one, with a reason that the history keeps', async () => {
    const id = newId();
    await add({ id, layers: [{ material: 'soil' }] });
    const raw = { kind: 'bed-layer', id, revision: 1, reason: 'Wrong bed' };
    expect(
      await runAs(people.member, voidRecordInput, voidRecord, raw, { reason: 'Wrong bed' }),
    ).toMatchObject({ kind: 'ok' });
    expect((await layersOf())?.some((layer) => layer.id === id)).toBe(false);
    expect(await historyOf(people.coordinator, id)).toMatchObject([
      { action: 'created' },
      { reason: 'Wrong bed' },
    ]);
  });

  it.each([
    ['no layer', { layers: [] }, 'layers.0.material', 'missing-choice'],
    ['a day before the bed was laid', { laidOn: '2026-03-01' }, 'laidOn', 'before-inoculation'],
    ['a day to come', { laidOn: '2027-01-01' }, 'laidOn', 'future-date'],
    [
      'a layer of two metres',
      { layers: [{ material: 'soil', thickness: mm('2000') }] },
      'layers.0.thickness',
      'too-large',
    ],
  ])('refuse %s', async (_what, changes, field, code) => {
    expect(await add(changes)).toMatchObject({ kind: 'invalid', errors: [{ field, code }] });
  });

  it('are refused to bags', async () => {
    const batchId = await startBags(people, stock);
    expect(await add({ batchId })).toMatchObject({ errors: [{ code: 'only-beds-have-layers' }] });
  });

  it('are not found by another site, another network or a funder', async () => {
    for (const actor of [people.neighbour, people.stranger]) {
      expect(await add({}, actor)).toEqual({ kind: 'not-found' });
      expect(await layersOf(actor)).toBeUndefined();
    }
    expect(await add({}, people.funder)).not.toMatchObject({ kind: 'ok' });
  });
});
