import { spawnSync } from 'node:child_process';
import { Client } from 'pg';
import { createCluster } from './create-cluster';
import { type DatabaseUrls, databaseUrls } from './database-urls';
import { withFolderLock } from './folder-lock';
import { passwordsOf } from './passwords';
import { giveRoles, prepareDatabase } from './prepare-database';
import { type ServerHome, serverHome } from './server-home';
import { startServer } from './start-server';

/** A hold on the PostgreSQL server of one folder, which runs for as long as somebody holds it. */
export type EmbeddedServer = {
  port: number;
  /** The addresses of a database of this server, by default the one Pinset keeps its records in. */
  urls: (database?: string) => DatabaseUrls;
  /** Applies roles.sql to a database of this server and lets the roles sign in. */
  giveRoles: (database: string) => Promise<void>;
  /** Settles when the server goes away without having been asked to. */
  lost: Promise<void>;
  /** Lets go of the server, and stops it when nobody else holds it. */
  release: () => Promise<void>;
};

const keeperName = 'pinset keeper';

function stop({ programs, dataFolder, account }: ServerHome) {
  const stopped = spawnSync(programs.pgCtl, ['stop', '-D', dataFolder, '-m', 'fast', '-w'], {
    encoding: 'utf8',
    cwd: dataFolder,
    ...account,
  });
  if (stopped.status !== 0)
    throw new Error(`PostgreSQL did not stop: ${stopped.error?.message ?? stopped.stderr}`);
}

const otherKeepers = async (client: Client) => {
  const { rows } = await client.query<{ others: number }>(
    'SELECT count(*)::int AS others FROM pg_stat_activity WHERE application_name = $1 AND pid <> pg_backend_pid()',
    [keeperName],
  );
  return rows[0]?.others ?? 0;
};

/**
 * Opens the embedded PostgreSQL server of `folder`: creates it at first use with random passwords and the
 * three roles of roles.sql, starts it unless it runs, and holds it. The hold is a connection, so it ends with
 * the process however that ends. A server left behind by a killed command is taken over with its data.
 */
export const openEmbeddedServer = (folder: string): Promise<EmbeddedServer> =>
  withFolderLock(folder, async () => {
    const home = await serverHome(folder);
    const passwords = passwordsOf(folder, home.dataFolder);
    createCluster(home, passwords.postgres);
    const port = await startServer(home, passwords, folder);
    await prepareDatabase(passwords, port);

    const keeper = new Client({
      connectionString: databaseUrls(passwords, port, 'postgres').superuser,
      application_name: keeperName,
      keepAlive: true,
    });
    let released = false;
    const lost = new Promise<void>((resolve) => {
      // The end follows every error, so the error itself needs no answer.
      keeper.on('error', () => {});
      keeper.on('end', () => released || resolve());
    });
    await keeper.connect();
    return {
      port,
      lost,
      giveRoles: (database) => giveRoles(passwords, port, database),
      urls: (database = 'pinset') => databaseUrls(passwords, port, database),
      release: () =>
        withFolderLock(folder, async () => {
          released = true;
          const isLast = (await otherKeepers(keeper)) === 0;
          await keeper.end();
          if (isLast) stop(home);
        }),
    };
  });
