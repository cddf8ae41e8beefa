import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { type EmbeddedServer, openEmbeddedServer } from '@/lib/database/embedded/embedded-server';

function childrenOf(pid: number): number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((child) => {
      try {
        const stat = readFileSync(`/proc/${child}/stat`, 'utf8');
        return Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]) === pid;
      } catch {
        // Ended between the list and the look.
        return false;
      }
    });
}

const alive = (pid: number) => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

/** A PostgreSQL server of our own in `folder`, whose postmaster and children can all be killed with -9. */
export async function killableDatabase(folder: string) {
  let server: EmbeddedServer = await openEmbeddedServer(folder, 'nemesis');
  return {
    access: () => server,
    kill: async () => {
      const [line = ''] = readFileSync(path.join(server.dataFolder, 'postmaster.pid'), 'utf8').split('\n');
      const postmaster = Number(line);
      const all = [postmaster, ...childrenOf(postmaster)];
      for (const pid of all) if (alive(pid)) process.kill(pid, 'SIGKILL');
      await server.lost;
    },
    start: async () => {
      server = await openEmbeddedServer(folder, 'nemesis');
    },
    end: () => server.release(),
  };
}
