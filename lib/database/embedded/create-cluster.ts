import { spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { ServerHome } from './server-home';

const layout = [
  '--username=postgres',
  '--auth=scram-sha-256',
  '--encoding=UTF8',
  '--locale=C.UTF-8',
  '--locale-provider=builtin',
  '--builtin-locale=C.UTF-8',
  '--data-checksums',
];

/** Creates the cluster unless it exists. It is made beside its place and moved there whole, never half. */
export function createCluster({ programs, dataFolder, account }: ServerHome, superuserPassword: string) {
  if (existsSync(dataFolder)) return;
  const making = `${dataFolder}.new`;
  const passwordFile = path.join(making, 'password');
  rmSync(making, { recursive: true, force: true });
  mkdirSync(path.join(making, 'data'), { recursive: true, mode: 0o700 });
  writeFileSync(passwordFile, superuserPassword, { mode: 0o600 });
  if (account)
    for (const owned of [making, path.join(making, 'data'), passwordFile])
      chownSync(owned, account.uid, account.gid);

  const made = spawnSync(
    programs.initdb,
    [...layout, `--pwfile=${passwordFile}`, `--pgdata=${path.join(making, 'data')}`],
    { encoding: 'utf8', cwd: making, ...account },
  );
  if (made.status !== 0) throw new Error(`PostgreSQL's initdb failed: ${made.error?.message ?? made.stderr}`);
  renameSync(path.join(making, 'data'), dataFolder);
  rmSync(making, { recursive: true, force: true });
}
