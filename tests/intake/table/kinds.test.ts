import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { openPoints } from '@/lib/intake/table/open-points';
import { settlePoints } from '@/lib/intake/table/settle';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
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

const table = (...rows: string[][]) => rows.map((row) => row.join(',')).join('\n');

describe('tables of each kind', () => {
  it('sites come in by their code, once', async () => {
    const text = table(
      ['Code', 'Name', 'Type', 'Opened'],
      ['ELM', 'Elm Court', 'Community garden', '2024-03-01'],
      ['BARN', 'The Barn', 'finca', ''],
      ['MILL', 'Mill Lane Garden', 'farm', ''],
      ['', 'Nameless', 'farm', ''],
    );
    const asked = { kind: 'sites', now } as const;
    const file = await bring(people.coordinator, asked, text);
    expect((await file.check()).counts).toMatchObject({ new: 2, there: 1, needs: 1 });
    expect(await file.wrong()).toEqual([[5, 'code', 'missing']]);
    expect((await file.add()).counts).toMatchObject({ added: 2 });
    const kinds = await readAs(people.coordinator, ({ db }) =>
      db.site.findMany({ where: { code: { in: ['ELM', 'BARN'] } }, orderBy: { code: 'asc' } }),
    );
    expect(kinds.map(({ code, kind, timeZone }) => [code, kind, timeZone])).toEqual([
      ['BARN', 'farm', 'America/New_York'],
      ['ELM', 'community_garden', 'America/New_York'],
    ]);
    const again = await bring(people.coordinator, asked, text);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 3 });
  });

  it('lots of material and of spawn come in by code, or by what they are where they have none', async () => {
    const materials = table(
      ['Lot', 'Material', 'Received on', 'Supplier', 'Weight (kg)', 'Moisture %'],
      ['STRAW-9', 'Wheat straw', '2026-05-03', 'North field', '180', '11'],
      ['', 'paja de trigo', '2026-05-04', 'North field', '90', ''],
      ['STRAW-8', 'moon dust', '2026-05-04', '', '90', ''],
    );
    const file = await bring(people.member, { kind: 'substrate_lots', now }, materials);
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 1 });
    expect(await file.wrong()).toEqual([[4, 'materialId', 'intake-unknown']]);
    await file.add();
    const spawn = table(
      ['Lote de micelio', 'Especie', 'Soporte', 'Hecho el', 'Proveedor'],
      ['SPN-9', 'Pleurotus ostreatus', 'grano', '2026-05-01', 'Cocina de Wren'],
      ['', 'shiitake', 'tarugos', '2026-05-02', ''],
    );
    const spawnFile = await bring(people.member, { kind: 'spawn_lots', now }, spawn);
    expect((await spawnFile.check()).counts).toMatchObject({ new: 2, needs: 0 });
    await spawnFile.add();
    for (const [kind, text, there] of [
      ['substrate_lots', materials, 2],
      ['spawn_lots', spawn, 2],
    ] as const) {
      const again = await bring(people.member, { kind, now }, text);
      expect((await again.check()).counts).toMatchObject({ new: 0, there });
    }
  });

  it('batches come in with their lots and treatment, and findings of them afterwards', async () => {
    const batches = table(
      [
        'Batch',
        'Species',
        'Container',
        'Bags',
        'Inoculation date',
        'Substrate lot',
        'Treatment',
        'Wet weight (kg)',
        'Moisture %',
        'Spawn lot',
        'Spawn (kg)',
      ],
      [
        'OLD-1',
        'house oysters',
        'bags',
        '20',
        '04/02/2026',
        'STRAW-1',
        'BATH-1',
        '29.3',
        '70',
        'SP-1',
        '1.2',
      ],
      [
        'OLD-2',
        'house oysters',
        'bags',
        '20',
        '04/13/2026',
        'STRAW-1',
        'cold lime soak',
        '29.3',
        '70',
        'SP-1',
        '1.2',
      ],
      ['OLD-3', 'house oysters', 'bags', '0', '04/13/2026', 'STRAW-1', 'steam', '29.3', '70', 'SP-1', '1.2'],
      [
        'OLD-4',
        'house oysters',
        'bags',
        '20',
        '04/13/2026',
        'STRAW-77',
        'steam',
        '29.3',
        '70',
        'SP-1',
        '1.2',
      ],
    );
    const asked = { kind: 'batches', siteId: people.millLane, now } as const;
    const file = await bring(people.member, asked, batches);
    await file.check();
    const { unknown, choices } = await readAs(people.member, (context) => openPoints(context, file.id));
    expect(unknown.map(({ field, text, rows }) => [field, text, rows])).toEqual([
      ['species', 'house oysters', 4],
      ['substrateLot', 'STRAW-77', 1],
    ]);
    expect(choices.get('species HOUSE OYSTERS')).toMatchObject({ kind: 'records' });
    await settlePoints(people.member, file.id, { [unknown[0]?.key ?? '']: stock.oyster }, []);
    const checked = await file.check();
    expect(checked.missing).toEqual([]);
    expect(await file.wrong()).toEqual([
      [4, 'unitCount', 'no-units'],
      [5, 'components.0.lotId', 'intake-unknown'],
    ]);
    expect(checked.counts).toMatchObject({ new: 2, needs: 2 });
    expect((await file.add()).counts).toMatchObject({ added: 2 });
    const [first] = await readAs(people.member, ({ db }) =>
      db.batch.findMany({ where: { code: 'OLD-1' }, include: { components: true } }),
    );
    expect(first).toMatchObject({ unitCount: 20, dryGrams: 8790, siteId: people.millLane });
    // What the text stood for is remembered for the site.
    const again = await bring(people.member, asked, batches);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 2, needs: 2 });

    const findings = table(
      ['Batch', 'Date found', 'Bags', 'Mould', 'Action', 'Notes'],
      ['old 1', '2026-04-20', '3', 'green mould', 'thrown out', 'by the door'],
      ['OLD-1', '2026-04-25', '40', 'black', '', ''],
      ['OLD-2', '2026-04-25', '1', 'sparkling', '', ''],
    );
    const found = await bring(people.member, { kind: 'findings', now }, findings);
    await found.check();
    expect(await found.wrong()).toEqual([
      [2, 'stage', 'intake-stage-colonising'],
      [3, 'stage', 'intake-stage-colonising'],
      [3, 'action', 'intake-left-in-place'],
      [4, 'sign', 'intake-unknown'],
    ]);
    await settlePoints(people.member, found.id, {}, ['intake-stage-colonising', 'intake-left-in-place']);
    await found.check();
    expect(await found.wrong()).toEqual([
      [3, 'units', 'too-many-units'],
      [4, 'sign', 'intake-unknown'],
    ]);
    expect((await found.add()).counts).toMatchObject({ added: 1 });
  });

  it('a member cannot bring in sites, nor batches of another site', async () => {
    const sites = await bring(
      people.member,
      { kind: 'sites', now },
      table(['Code', 'Name'], ['NEW', 'New one']),
    );
    expect((await sites.check()).counts).toMatchObject({ new: 0, needs: 1 });
    const batches = table(
      ['Batch', 'Site', 'Species', 'Container', 'Bags', 'Date', 'Substrate', 'Treatment'],
      ['FAR-1', 'QUARRY', 'oyster', 'bag', '5', '2026-05-01', 'STRAW-1', 'steam'],
    );
    const file = await bring(people.member, { kind: 'batches', now }, batches);
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 1 });
  });
});
