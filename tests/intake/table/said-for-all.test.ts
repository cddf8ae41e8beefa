import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { mendRow } from '@/lib/intake/table/mend-row';
import { changeLayout, settlePoints } from '@/lib/intake/table/settle';
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

const lines = (...rows: string[]) => rows.join('\n');
const asked = () => ({ kind: 'notebook', siteId: people.millLane, now }) as const;
const batchNamed = (code: string) =>
  readAs(people.member, ({ db }) =>
    db.batch.findFirst({
      where: { code },
      include: { findings: true, weighingLines: { include: { weighing: true } } },
    }),
  );

async function give(id: string, layout: Parameters<typeof changeLayout>[2], given: Record<string, string>) {
  expect(await changeLayout(people.member, id, { ...layout, given })).toEqual({ kind: 'ok', value: null });
}

describe('what no column of a table says', () => {
  const head = 'Batch,Species,Units,Inoculated,Substrate,Treatment';
  const row = (code: string) => `${code},Pleurotus ostreatus,12,2026-04-02,STRAW-1,steam`;

  it('is asked before the check, and given once for the whole table', async () => {
    const file = await bring(
      people.member,
      { ...asked(), kind: 'batches' },
      lines(head, row('GIV-1'), row('GIV-2')),
    );
    const { missing, asked: open, layout } = await file.look();
    expect(missing).toEqual(['containerKind']);
    expect(open.map(({ name }) => name)).toEqual(['containerKind', 'moistureSource']);
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 2 });
    await give(file.id, layout, { containerKind: 'bucket', moistureSource: 'none' });
    expect((await file.look()).missing).toEqual([]);
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 0 });
    await file.add();
    expect((await batchNamed('GIV-1'))?.containerKind).toBe('bucket');
  });

  it('is chosen for one row where it differs', async () => {
    const file = await bring(people.member, asked(), lines(head, row('GIV-3'), row('GIV-4')));
    expect((await file.check()).counts).toMatchObject({ new: 0, needs: 2 });
    const cells = row('GIV-3').split(',');
    await mendRow(people.member, file.id, { line: 2, cells, said: { containerKind: 'log' }, confirmed: [] });
    await file.check();
    expect(await file.wrong()).toEqual([[3, 'containerKind', 'missing-choice']]);
    await file.add();
    expect((await batchNamed('GIV-3'))?.containerKind).toBe('log');
  });

  it('is never said over a column that is there', async () => {
    const file = await bring(people.member, asked(), lines(`${head},Container`, `${row('GIV-5')},log`));
    await give(file.id, (await file.look()).layout, { containerKind: 'bag' });
    await file.check();
    await file.add();
    expect((await batchNamed('GIV-5'))?.containerKind).toBe('log');
  });
});

describe('units found contaminated of which a line says no more', () => {
  const head =
    'Batch,Species,Container,Units,Inoculated,Substrate,Treatment,Contaminated,Fresh (g),Harvest date';
  const line = (code: string, rest: string) =>
    `${code},Pleurotus ostreatus,bag,12,2026-04-02,STRAW-1,steam,${rest}`;
  const questions = [
    ...['intake-found-when-weighed', 'intake-no-sign', 'intake-stage-cropping', 'intake-left-in-place'],
  ];

  it('are asked about fact by fact, and what was taken to be so stays noted with the finding', async () => {
    const file = await bring(people.member, asked(), lines(head, line('UNS-1', '2,410,2026-05-12')));
    await file.check();
    expect((await file.wrong()).map(([, , code]) => code)).toEqual(questions);
    await settlePoints(people.member, file.id, {}, questions);
    await file.check();
    await file.add();
    const [finding] = (await batchNamed('UNS-1'))?.findings ?? [];
    expect(finding).toMatchObject({ units: 2, sign: 'other', stage: 'cropping', action: 'left_in_place' });
    expect(finding?.note).toMatch(
      /the day found \(that of the harvest\), the sign, the stage, what was done/,
    );
  });

  it('without a day of their own or of one harvest need one, which can be given for the table', async () => {
    const file = await bring(people.member, asked(), lines(head, line('UNS-2', '2,,'), line('UNS-3', '0,,')));
    await file.check();
    expect(await file.wrong()).toEqual([[2, 'foundOn', 'missing']]);
    const given = { foundOn: '2026-04-20', sign: 'green', stage: 'colonising', action: 'isolated' };
    await give(file.id, (await file.look()).layout, given);
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 0 });
    await file.add();
    const [finding] = (await batchNamed('UNS-2'))?.findings ?? [];
    expect(finding).toMatchObject({ sign: 'green', action: 'isolated', note: null });
    expect((await batchNamed('UNS-3'))?.findings).toEqual([]);
  });
});

describe('a notebook of single bags', () => {
  const head =
    'Farm;Batch;Bag no.;Species;Inoculated;Treatment;Substrate;Spawn lot;Bag weight kg;Mould?;Mould date;1st flush g;2nd flush g;2nd flush date';
  const bag = (number: string, rest: string) =>
    `Mill Lane Garden;BAG-1;${number};Pleurotus ostreatus;02.04.2026;steam;STRAW-1;SP-1;${rest}`;
  const text = lines(
    head,
    bag('1', '2,4;no;;410;220;20.05.2026'),
    bag('2', '2,5;green;20.04.2026;;;'),
    bag('3', '2,3;no;;395;;'),
    bag('4', '2,4;x;20.04.2026;;;'),
  );

  it('takes no filled bag for a harvest, and what all bags were filled with for the mass of the batch', async () => {
    const file = await bring(people.member, asked(), text);
    const { layout } = await file.look();
    await give(file.id, layout, {
      ...layout.given,
      ...{ weighedOn1: '2026-05-10', stage: 'colonising', action: 'discarded' },
    });
    const yes = ['intake-units-of-lines', 'intake-no-sign'];
    await settlePoints(people.member, file.id, {}, yes);
    const { counts } = await file.check();
    expect(await file.wrong()).toEqual([]);
    expect(counts).toMatchObject({ new: 4 });
    await file.add();
    const batch = await batchNamed('BAG-1');
    expect(batch).toMatchObject({ containerKind: 'bag', unitCount: 4, wetGrams: 9_600 });
    expect(
      batch?.weighingLines
        .map(({ flush, freshGrams, weighing }) => [
          flush,
          freshGrams,
          weighing.weighedOn.toISOString().slice(0, 10),
        ])
        .sort(),
    ).toEqual([
      [1, 395, '2026-05-10'],
      [1, 410, '2026-05-10'],
      [2, 220, '2026-05-20'],
    ]);
    expect(batch?.findings.map(({ units, sign }) => [units, sign]).sort()).toEqual([
      [1, 'green'],
      [1, 'other'],
    ]);
    const again = await bring(people.member, asked(), text);
    await give(again.id, (await again.look()).layout, { ...layout.given, weighedOn1: '2026-05-10' });
    expect((await again.check()).counts).toMatchObject({ there: 4, new: 0 });
  });

  it('asks before a batch comes in without the mass of which it has only a part', async () => {
    const some = text.replaceAll('BAG-1', 'BAG-2').replace(';2,4;x;', ';;x;').replace(';2,5;', ';;');
    const file = await bring(people.member, asked(), some);
    const { layout } = await file.look();
    await give(file.id, layout, {
      ...layout.given,
      ...{ weighedOn1: '2026-05-10', stage: 'colonising', action: 'discarded', sign: 'green' },
    });
    await settlePoints(people.member, file.id, {}, ['intake-units-of-lines']);
    await file.check();
    expect((await file.wrong())[0]).toEqual([2, 'unitFilledMass', 'intake-some-units-weighed']);
  });
});
