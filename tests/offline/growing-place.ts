import { rmSync } from 'node:fs';
import { parseInput } from '@/lib/access/parse-input';
import { writeAs } from '@/lib/access/scoped-db';
import { disconnect } from '@/lib/database/client';
import { makeDatabase } from '@/lib/database/embedded/scratch-database';
import { databaseUrls } from '@/lib/database/embedded/server-access';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testSettings } from '../support/entries';
import { growers } from '../support/growers';
import { shed, twentyBags } from '../support/shed';
import { killableDatabase } from './killable-database';

const database = 'nemesis';

/** A PostgreSQL server of its own in `folder` with people, stock and a way to start batches, for scripts; the folder goes with it. */
export async function growingPlace(folder: string) {
  const postgres = await killableDatabase(folder);
  const { owner, app, superuser } = await makeDatabase(postgres.access(), database);
  await runMigrations(owner);
  process.env.DATABASE_URL = app;
  testSettings();
  const people = await growers(superuser);
  const stock = await shed(people);
  await disconnect();
  return {
    ...{ postgres, people, app },
    superuser: () => databaseUrls(postgres.access(), database).superuser,
    anotherBatch: async (): Promise<string> => {
      const input = parseInput(startBatchInput, twentyBags(people, stock));
      if (input.kind !== 'ok') throw new Error(JSON.stringify(input));
      const now = new Date('2026-05-20T15:00:00Z');
      const result = await writeAs(people.member, { now }, (context) => startBatch(context, input.value));
      if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
      return result.value.id;
    },
    end: async () => {
      await disconnect();
      await postgres.end();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
