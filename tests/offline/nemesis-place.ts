import { Client } from 'pg';
import { disconnect } from '@/lib/database/client';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { moreMembers } from '../support/more-members';
import { checkRecords, type Verdict } from './check-records';
import { growingPlace } from './growing-place';
import { killableServer } from './killable-server';
import { lateCommitMilliseconds } from './late-commit';
import { type NemesisLog, type NemesisPlan, runNemesis } from './nemesis-run';

const mostDevices = 8;

/** A database and a server of their own in `folder`, for runs one after the other; each has a batch to itself. */
export async function nemesisPlace(folder: string, bug: string) {
  const place = await growingPlace(folder);
  const members = await moreMembers(place.superuser(), place.people.member, mostDevices);
  const server = killableServer(place.app, members, bug);
  await server.start();

  const killer = {
    app: async () => {
      await server.kill();
      await server.start();
    },
    database: async () => {
      await place.postgres.kill();
      await place.postgres.start();
    },
  };
  const judge = async (batchId: string, log: NemesisLog): Promise<Verdict> => {
    const admin = new Client({ connectionString: place.superuser() });
    await admin.connect();
    try {
      return await checkRecords(admin, batchId, log);
    } finally {
      await admin.end();
    }
  };

  return {
    run: async (
      random: SeededRandom,
      size: Pick<NemesisPlan, 'entries' | 'devices' | 'kills'>,
    ): Promise<{ verdict: Verdict; log: NemesisLog }> => {
      const batchId = await place.anotherBatch();
      // This process keeps no connection that a kill could break.
      await disconnect();
      const log = await runNemesis({
        ...size,
        ...{ random, batchId, killer, port: server.port },
        people: members,
        deletesRefused: bug === 'delete-refused',
        restMilliseconds: bug === 'ack-early' ? 2 * lateCommitMilliseconds : 0,
      });
      return { verdict: await judge(batchId, log), log };
    },
    end: async () => {
      await server.end();
      await place.end();
    },
  };
}
