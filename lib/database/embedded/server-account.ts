import { spawnSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';

/** An operating-system account, by number. */
export type ServerAccount = { uid: number; gid: number };

const account = (name: string): ServerAccount | undefined => {
  for (const line of readFileSync('/etc/passwd', 'utf8').split('\n')) {
    const [login, , uid, gid] = line.split(':');
    if (login === name) return { uid: Number(uid), gid: Number(gid) };
  }
  return undefined;
};

/**
 * The account the server must run under, or undefined where it can be that of the caller. PostgreSQL refuses
 * to run as root, so root lends it a system account, made where there is none.
 */
export function serverAccount(): ServerAccount | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const existing = account('postgres') ?? account('pinset');
  if (existing) return existing;
  spawnSync('useradd', ['--system', '--no-create-home', '--shell', '/usr/sbin/nologin', 'pinset']);
  const made = account('pinset') ?? account('nobody');
  if (made) return made;
  throw new Error('no system account to run PostgreSQL under, and useradd could not make one');
}

/** Whether `who` may pass through every folder down to and including `folder`. */
export function canEnter(folder: string, who: ServerAccount): boolean {
  const { uid, gid, mode } = statSync(folder);
  const bit = uid === who.uid ? 0o100 : gid === who.gid ? 0o010 : 0o001;
  const parent = path.dirname(folder);
  return (mode & bit) !== 0 && (parent === folder || canEnter(parent, who));
}
