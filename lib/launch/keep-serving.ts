import { type EmbeddedServer, openEmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { StartProblem } from '@/lib/database/start-problem';
import { type App, type Serving, serveApp } from './serve-app';
import { beforeExit } from './shut-down';

/** Opens the embedded server of `folder` and lets go of it when this process ends. */
export async function holdDatabase(folder: string, holder: string): Promise<EmbeddedServer> {
  const server = await openEmbeddedServer(folder, holder);
  beforeExit(() => server.release());
  if (!server.dataFolder.startsWith(folder)) console.log(`The database is in ${server.dataFolder}.`);
  return server;
}

/** Starts the application and stops it, before its database, when this process ends. */
export async function holdApp(serving: Serving): Promise<App> {
  const app = await serveApp(serving);
  beforeExit(() => app.stop());
  return app;
}

/**
 * Watches over a running application and its embedded database until a signal ends this process. A database
 * that goes away is started again on its old port, where the application's connections find it.
 */
export async function keepServing(
  app: App,
  database: EmbeddedServer,
  folder: string,
  holder: string,
): Promise<number> {
  let server = database;
  for (;;) {
    const code = await Promise.race([app.ended, server.lost]);
    if (typeof code === 'number') throw new StartProblem(`The application ended with code ${code}.`);
    console.error('The database went away; starting it again.');
    const again = await holdDatabase(folder, holder);
    if (again.port !== server.port)
      throw new StartProblem('The database had to move to another port: start this command again.');
    server = again;
  }
}
