import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
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
});
