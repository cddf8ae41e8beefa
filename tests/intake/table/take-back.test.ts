import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { settlePoints } from '@/lib/intake/table/settle';
import { takeBack } from '@/lib/intake/table/take-back';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { find, startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const head =
  'Lote;Especie;Recipiente;Bolsas;Fecha de siembra;Sustrato;Tratamiento;Peso húmedo (kg);Humedad %;Micelio;Micelio usado (kg);Fecha de cosecha;Peso (g);Contaminadas;Fecha del hallazgo;Moho';
const batch = (code: string) => `${code};Pleurotus ostreatus;bolsa;8;2/4/2026;STRAW-1;steam;14,4;70;SP-1;0,2`;
const notebook = (code: string) =>
  [head, `${batch(code)};12/5/2026;410;;;`, `${batch(code)};;;1;20/4/2026;verde`].join('\r\n');

const back = (actor: Actor, id: string, reason = 'bags weighed wet') => takeBack(actor, { id, reason }, now);

const standing = (code: string) =>
  readAs(people.member, ({ db }) =>
    db.batch.findFirst({
      where: { code, voidedAt: null },
      include: {
        weighingLines: { where: { weighing: { voidedAt: null } } },
        findings: { where: { voidedAt: null } },
      },
    }),
  );

async function brought(text: string, kind: 'notebook' | 'harvests' = 'notebook') {
  const file = await bring(people.member, { kind, siteId: people.millLane, now }, text);
  await file.check();
  await settlePoints(people.member, file.id, {}, ['intake-stage-colonising', 'intake-left-in-place']);
  await file.check();
  expect(await file.wrong()).toEqual([]);
  await file.add();
  return file;
}

describe('a table that was added', () => {
  it('is taken back whole, with a reason in the history, and can be added again', async () => {
    const file = await brought(notebook('BACK-1'));
    const before = await standing('BACK-1');
    expect(before).toMatchObject({ weighingLines: [{ freshGrams: 410 }], findings: [{ units: 1 }] });
    expect(await back(people.member, file.id)).toEqual({ kind: 'ok', value: { records: 3 } });
    expect(await standing('BACK-1')).toBeNull();
    const history = await historyOf(people.member, before?.id ?? '');
    expect(history.at(-1)?.reason).toBe('bags weighed wet');
    expect(await file.look()).toMatchObject({ state: 'uploaded', counts: { added: 0, unread: 2 } });
    expect(await back(people.member, file.id)).toMatchObject({
      errors: [{ code: 'intake-nothing-added' }],
    });
    const again = await file.check();
    expect(await file.wrong()).toEqual([]);
    expect(again.counts).toMatchObject({ new: 2, there: 0, needs: 0 });
    await file.add();
    expect(await standing('BACK-1')).toMatchObject({ weighingLines: [{ freshGrams: 410 }] });
  });

  it('stays as it is where somebody has recorded on it since', async () => {
    const file = await brought(notebook('BACK-2'));
    const { id } = (await standing('BACK-2')) ?? { id: '' };
    const harvest = { weighedOn: '2026-07-01', trimState: 'trimmed', fresh: '0.09' };
    const raw = { ...harvest, lines: [{ batchId: id, flush: '2' }] };
    const weighed = await runAs(people.member, recordWeighingInput, recordWeighing, raw, { now });
    expect(weighed).toMatchObject({ kind: 'ok' });
    expect(await back(people.member, file.id)).toEqual({
      kind: 'invalid',
      errors: [{ field: '', code: 'still-in-use', values: { count: 1 } }],
    });
    expect((await standing('BACK-2'))?.weighingLines).toHaveLength(2);
    // Nor does what else was seen vanish with the batch.
    const seen = await brought(notebook('BACK-5'));
    const other = await standing('BACK-5');
    expect(await find(people.member, other?.id ?? '', { units: 1 })).toMatchObject({ kind: 'ok' });
    expect(await back(people.member, seen.id)).toMatchObject({ errors: [{ code: 'still-in-use' }] });
    expect((await standing('BACK-5'))?.findings).toHaveLength(2);
    expect((await file.look()).counts.added).toBe(2);
  });

  it('leaves alone what was there before: a batch of a form, and one of an earlier table', async () => {
    const own = await startBags(people, stock);
    const first = await brought(notebook('BACK-3'));
    const [form] = await readAs(people.member, ({ db }) => db.batch.findMany({ where: { id: own } }));
    const lines = [form?.code ?? '', 'BACK-3'].map((code, at) => `${code};${20 + at}/6/2026;0,3;${at + 1}`);
    const text = ['Lote;Fecha de cosecha;Peso (kg);Oleada', ...lines].join('\n');
    const second = await brought(text, 'harvests');
    expect((await standing('BACK-3'))?.weighingLines).toHaveLength(2);
    expect(await back(people.member, first.id)).toMatchObject({ errors: [{ code: 'still-in-use' }] });
    expect(await back(people.member, second.id)).toEqual({ kind: 'ok', value: { records: 2 } });
    expect((await standing('BACK-3'))?.weighingLines).toHaveLength(1);
    expect(await standing(form?.code ?? '')).toMatchObject({ id: own, weighingLines: [] });
    expect(await back(people.member, first.id)).toMatchObject({ kind: 'ok' });
  });

  it('is not to be found by people of another site or network, nor without a reason', async () => {
    const file = await brought(notebook('BACK-4'));
    expect(await back(people.member, file.id, ' ')).toMatchObject({
      errors: [{ field: 'reason', code: 'missing' }],
    });
    for (const other of [people.neighbour, people.stranger, people.funder])
      expect(await back(other, file.id)).toMatchObject({ kind: 'not-found' });
    expect(await standing('BACK-4')).not.toBeNull();
  });
});
