import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { getReport } from '@/lib/report/get-report.query';
import { publishReport } from '@/lib/report/publish-report.command';
import { arrange, makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
});
afterAll(() => admin.end());

const agree = (funder: string) =>
  admin.query(
    `insert into sharing_agreement (network_id, site_id, with_members, with_funder)
     values ($1, $2, 'named', $3::sharing_level)
     on conflict (network_id, site_id) do update set with_funder = excluded.with_funder`,
    [world.people.coordinator.networkId, world.people.millLane, funder],
  );

it('a draft that names a site which took its name back is not published', async () => {
  const { coordinator } = world.people;
  await agree('named');
  const { id } = await arrange(coordinator, buildReportInput, buildReport, {
    ...{ title: 'A year', from: '2026-01-01', to: '2026-07-20' },
    indicators: ['harvest'],
  });
  const draft = await readAs(coordinator, (context) => getReport(context, id));
  expect(draft?.content.sites?.named).toHaveLength(1);
  const publish = () => runAs(coordinator, publishReportInput, publishReport, { id }, {});
  await agree('anonymous');
  expect(await publish()).toMatchObject({ kind: 'invalid', errors: [{ code: 'report-name-taken-back' }] });
  await agree('named');
  expect(await publish()).toMatchObject({ kind: 'ok' });
});
