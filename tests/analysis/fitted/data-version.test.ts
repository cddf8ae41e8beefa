import { beforeAll, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { readDataVersion } from '@/lib/analysis/fitted/data-version';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { chooseSiteMethods } from '@/lib/records/site-method/choose-site-methods.command';
import { chooseSiteMethodsInput } from '@/lib/records/site-method/choose-site-methods.input';
import { testDay as now, startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
let stock: Shed;
let batchId: string;

beforeAll(async () => {
  stock = await shed(people);
  batchId = await startBags(people, stock);
});

const version = (day = '2026-05-20') =>
  readAs(people.coordinator, (context) => readDataVersion(context, new Map([[people.millLane, day]])));

it('is another one when a write commits after a later one was read', async () => {
  let written = () => {};
  let release = () => {};
  const isWritten = new Promise<void>((resolve) => {
    written = resolve;
  });
  const gate = new Promise<void>((resolve) => {
    release = resolve;
  });
  const slow = writeAs(people.member, { now }, async (context) => {
    const finding = { batchId, foundOn: '2026-04-11', units: '9', sign: 'green' };
    const input = recordFindingInput.parse({ ...finding, stage: 'colonising', action: 'isolated' });
    const result = await recordFinding(context, input);
    written();
    await gate;
    return result;
  });
  await isWritten;
  const steam = { id: people.quarry, revision: 0, methodIds: [stock.steam], reason: 'has a steamer' };
  const quick = await runAs(people.coordinator, chooseSiteMethodsInput, chooseSiteMethods, steam, { now });
  expect(quick.kind).toBe('ok');
  const before = await version();
  release();
  expect((await slow).kind).toBe('ok');
  expect(await version()).not.toBe(before);
});

it('stays while nothing is written, and is another one on another day', async () => {
  expect(await version()).toBe(await version());
  expect(await version('2026-05-21')).not.toBe(await version());
});
