import { Client } from 'pg';
import { createCluster } from './create-cluster';
import { withFolderLock } from './folder-lock';
import { passwordsOf } from './passwords';
import { prepareDatabase, recordsDatabase } from './prepare-database';
import { type DatabaseUrls, databaseUrls, type ServerAccess } from './server-access';
import { serverHome } from './server-home';
import { startServer, stopServer } from './start-server';

/** A hold on the PostgreSQL server of one folder, which runs for as long as somebody holds it. */
export type EmbeddedServer = ServerAccess & {
  /** Where the data lies: in the folder asked for, or where the server's account can reach it. */
  dataFolder: string;
  /** The addresses of the database in which Pinset keeps its records. */
  urls: DatabaseUrls;
  /** Settles when the server goes away without having been asked to. */
  lost: Promise<void>;
  /** Lets go of the server, and stops it when nobody else holds it. */
  release: () => Promise<void>;
};

/** How the connection that holds a server is called in pg_stat_activity, before the name of its holder. */
export const holdPrefix = 'pinset holds: ';

async function isHeldByOthers(keeper: Client) {
  const { rows } = await keeper.query(
    'SELECT FROM pg_stat_activity WHERE starts_with(application_name, $1) AND pid <> pg_backend_pid()',
    [holdPrefix],
  );
  return rows.length > 0;
}

/**
 * Opens the embedded PostgreSQL server of `folder`: creates it at first use with random passwords and the
 * three roles of roles.sql, starts it unless it runs, and holds it. The hold is a connection, so it ends with
 * the process however that ends. A server left behind by a killed command is taken over with its data.
 */
export const openEmbeddedServer = (folder: string, holder: string): Promise<EmbeddedServer> =>
  withFolderLock(folder, async () => {
    const home = await serverHome(folder);
    const passwords = passwordsOf(home.dataFolder);
    createCluster(home, passwords.postgres);
    const access = { passwords, port: await startServer(home, passwords, folder) };
    await prepareDatabase(access);

    const keeper = new Client({
      connectionString: databaseUrls(access, 'postgres').superuser,
      application_name: `${holdPrefix}${holder}`,
      keepAlive: true,
    });
    let hold: 'held' | 'released' | 'lost' = 'held';
    const lost = new Promise<void>((resolve) => {
      // The end follows every error, so the error itself needs no answer.
      keeper.on('error', () => {});
      keeper.on('end', () => {
        if (hold === 'released') return;
        hold = 'lost';
        resolve();
      });
    });
    await keeper.connect();

    const release = async () => {
      if (hold !== 'held') return;
      hold = 'released';
      const isLast = !(await isHeldByOthers(keeper));
      // The server lists a connection for some moments after its end: renamed, it counts no longer.
      await keeper.query("SET application_name = 'let go'");
      await keeper.end();
      if (isLast) stopServer(home);
    };
    const urls = databaseUrls(access, recordsDatabase);
    return {
      ...access,
      dataFolder: home.dataFolder,
      lost,
      urls,
      release: () => withFolderLock(folder, release),
    };
  });
