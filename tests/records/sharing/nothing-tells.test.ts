import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import fc from 'fast-check';
import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { batches } from '@/lib/api/resource/batches';
import { sites } from '@/lib/api/resource/network';
import { spawnLots, substrateLots } from '@/lib/api/resource/stock';
import { readings, treatments } from '@/lib/api/resource/treatments';
import { weighings } from '@/lib/api/resource/weighings';
import { saveTable } from '@/lib/export/saved/save-table';
import { isSavedTable, savedTables } from '@/lib/export/saved/saved-tables';
import { sharingLevels } from '@/lib/records/sharing/agree-sharing.input';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { getReport } from '@/lib/report/get-report.query';
import { publishReport } from '@/lib/report/publish-report.command';
import { writtenWords } from '@/lib/ui/export/written-words';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { commandRows } from '../../access/command-rows';
import { queryRows } from '../../access/query-rows';
import { arrange, makeWorld, now, type World } from '../../access/world';
import { testDatabase } from '../../support/database';
import { lendToQuarry } from '../../support/lent';

const { superuser, app } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const english = writtenWords(wordsFor('en', 'en-US'));
let world: World;
/** The same records as Quarry Farm holds them, each of which leads to Mill Lane. */
let quarrys: World;
let run: string;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  await admin.query(
    "update site set name = 'Kestrel Yard 88', code = 'KSTRL', note = 'Behind the tannery wall' where id = $1",
    [world.people.millLane],
  );
  const lent = await lendToQuarry(world);
  run = lent.run;
  quarrys = { ...world, batch: lent.later };
}, 180_000);
afterAll(() => admin.end());

const said = fc.record({
  members: fc.constantFrom(...sharingLevels),
  funder: fc.constantFrom(...sharingLevels),
});

async function agree({ members, funder }: { members: string; funder: string }): Promise<void> {
  const { millLane, coordinator } = world.people;
  await admin.query(
    `insert into sharing_agreement (network_id, site_id, with_members, with_funder)
     values ($1, $2, $3::sharing_level, $4::sharing_level)
     on conflict (network_id, site_id) do update set with_members = excluded.with_members, with_funder = excluded.with_funder`,
    [coordinator.networkId, millLane, members, funder],
  );
}

const whole = (answer: unknown) =>
  JSON.stringify(answer ?? null, (_key, value: unknown) =>
    value instanceof Map ? [...value] : value instanceof Set ? [...value] : value,
  );

/** What scripts read, by the kinds that members of several sites meet in. */
const scripts = [treatments, readings, batches, weighings, sites, spawnLots, substrateLots];

/** Everything that an outsider is answered: queries about both sites, exports, reports. */
async function* answersFor(actor: Actor): AsyncGenerator<readonly [string, string]> {
  for (const asked of [world, quarrys])
    for (const row of [...queryRows, ...commandRows])
      if (row.answer) yield [row.file, whole(await row.answer(asked, actor))];
  yield ['run', whole(await readAs(actor, (context) => getTreatment(context, run, now)))];
  for (const kind of scripts) {
    const rows = await readAs(actor, (context) =>
      kind.read(context, {}, { orderBy: { id: 'asc' }, take: 500 }, {}),
    );
    yield [`script ${kind.name}`, whole(rows)];
  }
  const { id } = await arrange(world.people.coordinator, buildReportInput, buildReport, {
    ...{ title: 'A year', from: '2026-01-01', to: '2026-07-20' },
    indicators: [...reportIndicators],
  });
  await arrange(world.people.coordinator, publishReportInput, publishReport, { id });
  yield ['report', whole(await readAs(actor, (context) => getReport(context, id)))];
  for (const name of Object.keys(savedTables).filter(isSavedTable)) {
    const made = await saveTable(actor, name, {}, 'csv', english);
    if (made.kind !== 'saved') continue;
    yield [`export ${name}`, await readFile(made.file, 'utf8')];
    await rm(path.dirname(made.file), { recursive: true });
  }
}

it('holds, whatever was agreed, no name, code, place or id of a site that is not named to the reader', async () => {
  const { neighbour, funder, millLane } = world.people;
  await fc.assert(
    fc.asyncProperty(said, async (levels) => {
      await agree(levels);
      for (const [actor, level] of [
        [neighbour, levels.members],
        [funder, levels.funder === 'named' && levels.members === 'named' ? 'named' : 'anonymous'],
      ] as const) {
        let answers = 0;
        for await (const [from, text] of answersFor(actor)) {
          answers += 1;
          if (from === 'script treatments' && actor === neighbour) expect(text).toContain(run);
          expect(text, from).not.toContain(millLane);
          expect(text, from).not.toContain('tannery');
          expect(text, from).not.toContain('KSTRL');
          if (level !== 'named') expect(text, from).not.toContain('Kestrel');
        }
        expect(answers).toBeGreaterThan(60);
      }
    }),
    {
      numRuns: 5,
      seed: 20_261_126,
      examples: [
        [{ members: 'not_at_all', funder: 'named' }],
        [{ members: 'anonymous', funder: 'not_at_all' }],
      ],
    },
  );
}, 240_000);

it('holds for every row that the database lets an outsider read, whichever program asks', async () => {
  await agree({ members: 'anonymous', funder: 'not_at_all' });
  const { rows: tables } = await admin.query<{ name: string }>(
    `select relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
     where n.nspname = 'public' and c.relkind = 'r' and relname <> '_prisma_migrations'
       and has_table_privilege('pinset_app', c.oid, 'select')`,
  );
  const asApp = new Client({ connectionString: app });
  await asApp.connect();
  try {
    for (const { personId, networkId } of [world.people.neighbour, world.people.funder]) {
      await asApp.query('begin');
      await asApp.query(
        "select set_config('app.person_id', $1, true), set_config('app.network_id', $2, true)",
        [personId, networkId],
      );
      for (const { name } of tables) {
        const { rows } = await asApp.query(`select to_jsonb(t)::text as row from public."${name}" t`);
        expect(whole(rows), name).not.toMatch(/Kestrel|KSTRL|tannery/);
      }
      await asApp.query('rollback');
    }
  } finally {
    await asApp.end();
  }
});

it('tells the one who is named: the same answers do hold the name', async () => {
  await agree({ members: 'named', funder: 'named' });
  const texts: string[] = [];
  for await (const [, text] of answersFor(world.people.neighbour)) texts.push(text);
  expect(texts.filter((text) => text.includes('Kestrel Yard 88')).length).toBeGreaterThan(2);
}, 240_000);
