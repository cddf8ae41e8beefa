import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { saveTable } from '@/lib/export/saved/save-table';
import { openPoints } from '@/lib/intake/table/open-points';
import { changeLayout, settlePoints } from '@/lib/intake/table/settle';
import { allocateTreatment } from '@/lib/records/treatment/allocate-treatment.command';
import { allocateTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const kind = 'treatments';
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const table = (...rows: string[][]) => rows.map((row) => row.join(';')).join('\n');
const run = (code: string) =>
  readAs(people.coordinator, ({ db }) =>
    db.treatmentRun.findFirst({ where: { code }, include: { readings: { orderBy: { readAt: 'asc' } } } }),
  );

describe('a table of treatments', () => {
  it('without units is in those that the reader writes in', async () => {
    const reader = { ...people.member, temperatureUnit: 'fahrenheit', volumeUnit: 'gallon' } as const;
    const rows = table(
      ['Run', 'Method', 'Started', 'Ended', 'Water', 'Temp', 'Temperature at spawning'],
      ['F-1', 'Cold lime soak', '2026-05-04 18:00', '2026-05-05 10:30', '50', '62', '75'],
      ['F-2', 'Cold lime soak', '2026-05-06 18:00', '2026-05-07 10:30', '50', '62', '75'],
    );
    const file = await bring(reader, { kind, siteId: people.millLane, now }, rows);
    expect((await file.check()).counts).toMatchObject({ new: 2 });
    await file.add();
    const made = await run('F-1');
    expect(made?.waterMillilitres).toBe(189_271);
    expect(made?.loadCelsiusAtSpawning?.toNumber()).toBeCloseTo(23.9, 1);
    expect(made?.readings[0]?.celsius?.toNumber()).toBeCloseTo(16.7, 1);
  });

  it('comes in with its times, bath and readings, once', async () => {
    const rows = table(
      [
        'Run',
        'Method',
        'Date',
        'In at',
        'Out at',
        'Water',
        'Lime (g)',
        'Straw (kg)',
        'Temp (°C)',
        'pH',
        'Final pH',
      ],
      ['L-1', 'Cold lime soak', '04/05/2026', '18:00', '10:30', '200', '800', '12.5', '15', '12.4', '12.1'],
      ['H-1', 'baño de agua caliente', '04/06/2026', '8:15 am', '10:00', '', '', '10', '70', '', ''],
      ['L-2', 'Cold lime soak', '04/07/2026', '18:00', '10:30', '200', '800', '12.5', '15', '15', ''],
    );
    const asked = { kind, siteId: people.millLane, now } as const;
    const file = await bring(people.member, asked, rows);
    expect((await file.look()).missing).toEqual([]);
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 1 });
    expect(await file.wrong()).toEqual([[4, 'ph', 'ph-range']]);
    expect((await file.add()).counts).toMatchObject({ added: 2 });
    expect(await run('L-1')).toMatchObject({
      siteId: people.millLane,
      methodId: stock.lime,
      startedAt: new Date('2026-04-05T22:00:00Z'),
      endedAt: new Date('2026-04-06T14:30:00Z'),
      ...{ waterMillilitres: 200_000, limeGrams: 800, loadGrams: 12_500, origin: 'file_import' },
    });
    const readings = (await run('L-1'))?.readings.map(({ readAt, place, celsius, ph }) => [
      readAt.toISOString(),
      place,
      celsius?.toNumber() ?? null,
      ph?.toNumber() ?? null,
    ]);
    expect(readings).toEqual([
      ['2026-04-05T22:00:00.000Z', 'water', 15, 12.4],
      ['2026-04-06T14:30:00.000Z', 'water', null, 12.1],
    ]);
    // Nothing says that the middle of the load was that hot.
    expect((await run('H-1'))?.readings).toMatchObject([{ place: 'water' }]);
    const again = await bring(people.member, asked, rows);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 2, needs: 1 });
    const uncoded = await bring(
      people.member,
      asked,
      table(['Method', 'Started', 'Hours'], ['Cold lime soak', '2026-04-05 18:00', '16.5']),
    );
    expect((await uncoded.check()).counts).toMatchObject({ new: 0, there: 1 });
  });

  it('says a length of time instead of an end, in the unit it was written in', async () => {
    const rows = table(
      ['Tanda', 'Sitio', 'Método', 'Inicio', 'Duración'],
      ['V-1', 'MILL', 'vapor', '2026-04-10 09:00', '90'],
      ['V-2', 'MILL', 'vapor', '2026-04-11 09:00', '1 h 45 min'],
      ['V-3', 'MILL', 'vapor', '2026-04-12 09:00', '2:00'],
    );
    const file = await bring(people.coordinator, { kind, now }, rows);
    expect((await file.look()).layout.columns[4]).toEqual({ field: 'minutes', unit: 'min' });
    await file.check();
    await file.add();
    const ends = await Promise.all(['V-1', 'V-2', 'V-3'].map(async (code) => (await run(code))?.endedAt));
    expect(ends.map((end) => end?.toISOString())).toEqual([
      '2026-04-10T14:30:00.000Z',
      '2026-04-11T14:45:00.000Z',
      '2026-04-12T15:00:00.000Z',
    ]);
    const { layout } = await file.look();
    const inHours = layout.columns.map((one) =>
      one.field === 'minutes' ? { ...one, unit: 'h' as const } : one,
    );
    await changeLayout(people.coordinator, file.id, { ...layout, columns: inHours });
    expect((await file.look()).layout.columns[4]).toEqual({ field: 'minutes', unit: 'h' });
  });

  it('asks before a day without a time counts, and before an old load without an end stands as still in', async () => {
    const rows = table(
      ['Date', 'Method', 'Run'],
      ['2026-05-01', 'steam', 'S-1'],
      ['2026-07-20', 'steam', 'S-2'],
    );
    const file = await bring(
      people.member,
      { kind, siteId: people.millLane, now: new Date('2026-07-20T20:00:00Z') },
      rows,
    );
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 2 });
    const { questions } = await readAs(people.member, (context) => openPoints(context, file.id));
    expect(questions.map(({ rows: count, question }) => [count, question.code])).toEqual([
      [2, 'intake-no-time'],
      [1, 'intake-no-end'],
    ]);
    await settlePoints(people.member, file.id, {}, ['intake-no-time']);
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 1 });
    await settlePoints(people.member, file.id, {}, ['intake-no-end']);
    expect((await file.check()).counts).toMatchObject({ new: 2 });
    await file.add();
    expect(await run('S-1')).toMatchObject({ startedAt: new Date('2026-05-01T16:00:00Z'), endedAt: null });
  });

  it('tells by row what contradicts itself or cannot be', async () => {
    const rows = table(
      ['Run', 'Method', 'Started', 'Ended', 'Minutes', 'Lime (g)', 'End temperature'],
      ['X-1', 'Cold lime soak', '2026-05-01 18:00', '2026-05-02 10:00', '120', '', ''],
      ['X-2', 'steam', '2026-05-01 18:00', '2026-05-01 20:00', '', '500', ''],
      ['X-3', 'steam', '2026-05-01 18:00', '', '', '', '60'],
      ['X-4', 'untreated', '2026-05-01 18:00', '2026-05-01 20:00', '', '', ''],
      ['X-5', 'steam', '2026-09-01 18:00', '2026-09-01 20:00', '', '', ''],
      ['X-6', 'steam', '2026-05-01 25:00', '2026-05-01 20:00', '', '', ''],
      ['X-7', 'microwave', '2026-05-01 18:00', '2026-05-01 20:00', '', '', ''],
    );
    const file = await bring(people.member, { kind, siteId: people.millLane, now }, rows);
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 7 });
    expect(await file.wrong()).toEqual([
      [2, 'minutes', 'intake-other-length'],
      [3, 'lime', 'lime-soak-only'],
      [4, 'endedAt', 'missing'],
      [5, 'methodId', 'nothing-to-treat'],
      [6, 'startedAt', 'future-date'],
      [7, 'startedAt', 'not-a-date'],
      [8, 'methodId', 'intake-unknown'],
    ]);
  });

  it('knows a run lent by another site again, and takes none to a site of others', async () => {
    const mine = table(
      ['Run', 'Site', 'Method', 'Started at', 'Ended at'],
      ['FAR-1', 'QUARRY', 'steam', '2026-05-03 08:00', '2026-05-03 10:00'],
    );
    const made = await bring(people.coordinator, { kind, now }, mine);
    await made.check();
    await made.add();
    expect((await (await bring(people.member, { kind, now }, mine)).check()).counts).toMatchObject({
      needs: 1,
    });
    const treatmentRunId = (await run('FAR-1'))?.id;
    const raw = { treatmentRunId, siteId: people.millLane };
    const lent = await runAs(people.coordinator, allocateTreatmentInput, allocateTreatment, raw);
    expect(lent.kind).toBe('ok');
    const again = await bring(people.member, { kind, now }, mine);
    expect((await again.check()).counts).toMatchObject({ there: 1, needs: 0 });
  });

  it.each([
    ['en', 'en-US', 'csv'],
    ['es', 'es-US', 'xlsx'],
  ] as const)(
    'saved from the list in %s by a member, comes back as there already, lent runs too',
    async (language, region, format) => {
      const made = await saveTable(
        people.member,
        'treatments',
        {},
        format,
        writtenWords(wordsFor(language, region)),
      );
      if (made.kind !== 'saved') throw new Error(made.kind);
      const file = await bring(people.member, { kind, now }, await readFile(made.file));
      await rm(path.dirname(made.file), { recursive: true });
      expect(made.rows).toBeGreaterThan(8);
      const { counts } = await file.check();
      expect(await file.wrong()).toEqual([]);
      expect(counts).toMatchObject({ new: 0, needs: 0, there: made.rows });
    },
  );
});
