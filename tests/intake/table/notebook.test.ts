import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { mendRow } from '@/lib/intake/table/mend-row';
import { settlePoints } from '@/lib/intake/table/settle';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;

beforeAll(async () => {
  people = await growers(superuser);
  await shed(people);
});

const head =
  'Lote;Especie;Recipiente;Fecha de siembra;Sustrato;Tratamiento;Peso húmedo (kg);Humedad %;Micelio;Micelio usado (kg);Fecha de cosecha;Peso (g);Contaminadas;Fecha del hallazgo;Moho;Notas';
const batch = (code: string) => `${code};Pleurotus ostreatus;bolsa;2/4/2026;STRAW-1;steam;4,4;70;SP-1;0,2`;

describe('a notebook with one line per bag or per harvest', () => {
  it('becomes batches, harvests and findings, each once', async () => {
    const text = [
      head,
      `${batch('TEN-1')};12/5/2026;410;;;;first flush`,
      `${batch('TEN-1')};19/5/2026;280;;;;`,
      `${batch('TEN-1')};;;1;20/4/2026;verde;`,
      `${batch('TEN-2')};12/5/2026;390;;;;`,
      `${batch('TEN-3').replace('SP-1', 'SP-77')};12/5/2026;390;;;;`,
      `${batch('TEN-2')};31/5/2026;a lot;;;;`,
    ].join('\r\n');
    const asked = { kind: 'notebook', siteId: people.millLane, now } as const;
    const file = await bring(people.member, asked, text);
    const { layout, missing } = await file.look();
    expect(missing).toEqual([]);
    expect(layout.columns.map(({ field }) => field)).toEqual([
      ...['code', 'species', 'containerKind', 'inoculatedOn', 'substrateLot', 'treatment', 'filledMass'],
      ...[
        'moisturePercent',
        'spawnLot',
        'spawnMass',
        'weighedOn',
        'fresh',
        'contaminated',
        'foundOn',
        'sign',
      ],
      'note',
    ]);
    // No column says how many units a batch has: asked once for the table, and nothing is taken for bags unasked.
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 6 });
    expect((await file.wrong())[0]).toEqual([2, 'unitCount', 'intake-units-of-lines']);
    await settlePoints(people.member, file.id, {}, ['intake-units-of-lines']);
    expect((await file.check()).counts).toMatchObject({ new: 3, needs: 3 });
    expect(await file.wrong()).toEqual([
      [4, 'stage', 'intake-stage-colonising'],
      [4, 'action', 'intake-left-in-place'],
      [6, 'spawn.0.lotId', 'intake-unknown'],
      [7, 'fresh', 'not-a-number'],
    ]);
    await settlePoints(people.member, file.id, {}, ['intake-stage-colonising', 'intake-left-in-place']);
    expect((await file.check()).counts).toMatchObject({ new: 4, needs: 2 });
    expect(await file.wrong()).toEqual([
      [6, 'spawn.0.lotId', 'intake-unknown'],
      [7, 'fresh', 'not-a-number'],
    ]);
    expect(await readAs(people.member, ({ db }) => db.batch.count())).toBe(0);
    await file.add();
    const batches = await readAs(people.member, ({ db }) =>
      db.batch.findMany({
        orderBy: { code: 'asc' },
        include: { weighingLines: true, findings: true },
      }),
    );
    expect(
      batches.map(({ code, unitCount, weighingLines, findings }) => ({
        ...{ code, unitCount, found: findings.map(({ units, sign }) => [units, sign]) },
        grams: weighingLines.map(({ freshGrams }) => freshGrams).sort(),
      })),
    ).toEqual([
      { code: 'TEN-1', unitCount: 3, grams: [280, 410], found: [[1, 'green']] },
      { code: 'TEN-2', unitCount: 2, grams: [390], found: [] },
    ]);
    const again = await bring(people.member, asked, text);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 4, needs: 2 });
  });

  it('is asked whether a 1 on each of several lines is the batch or the line', async () => {
    const units = `Bolsas;${head}`;
    const text = [
      units,
      `1;${batch('ONE-1').replace('2/4/2026', '2026-04-02')};;;;;;`,
      `1;${batch('ONE-1').replace('2/4/2026', '2026-04-02')};;;;;;`,
    ].join('\n');
    const file = await bring(people.member, { kind: 'notebook', siteId: people.millLane, now }, text);
    await file.check();
    expect(await file.wrong()).toEqual([
      [2, 'unitCount', 'intake-one-unit'],
      [3, 'unitCount', 'intake-one-unit'],
    ]);
    const cells = [
      '2',
      ...batch('ONE-1').replace('2/4/2026', '2026-04-02').split(';'),
      '',
      '',
      '',
      '',
      '',
      '',
    ];
    await mendRow(people.member, file.id, { line: 2, cells, confirmed: [] });
    await file.check();
    expect(await file.wrong()).toEqual([]);
    await file.add();
    const made = await readAs(people.member, ({ db }) => db.batch.findFirst({ where: { code: 'ONE-1' } }));
    expect(made?.unitCount).toBe(2);
  });

  it('keeps a line that tells half of a harvest or of a finding', async () => {
    const text = [
      head,
      `${batch('HALF-1')};12/5/2026;;;;;`,
      `${batch('HALF-1')};;;;20/4/2026;verde;`,
      `${batch('HALF-1')};12/5/2026;;0;;;seen, nothing found`,
    ].join('\n');
    const file = await bring(people.member, { kind: 'notebook', siteId: people.millLane, now }, text);
    await settlePoints(people.member, file.id, {}, ['intake-units-of-lines']);
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 2 });
    expect(await file.wrong()).toEqual([
      [2, 'fresh', 'missing'],
      [3, 'units', 'missing'],
    ]);
  });
});
