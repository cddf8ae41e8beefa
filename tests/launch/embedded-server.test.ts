import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Client } from 'pg';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type EmbeddedServer, openEmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { whoAnswers } from '@/lib/database/embedded/running-server';
import { asSuperuser } from '@/lib/database/embedded/server-access';
import { serverAccount } from '@/lib/database/embedded/server-account';

const folder = mkdtempSync(path.join(tmpdir(), 'cluster-'));
const lockFile = () => path.join(first.dataFolder, 'postmaster.pid');
const serverPid = () => Number(readFileSync(lockFile(), 'utf8').split('\n')[0]);
const runs = async (server: EmbeddedServer) =>
  (await whoAnswers(server.urls.superuser, server.dataFolder)) === 'ours';

let first: EmbeddedServer;
const held: EmbeddedServer[] = [];
const hold = async (name: string) => {
  const server = await openEmbeddedServer(folder, name);
  held.push(server);
  return server;
};

const connected = async (url: string) => {
  const client = new Client({ connectionString: url });
  client.on('error', () => {});
  await client.connect();
  return client;
};

beforeAll(async () => {
  // What a creation that was killed half-way leaves behind.
  mkdirSync(path.join(folder, 'postgres.new/data'), { recursive: true });
  first = await hold('first');
}, 60_000);

afterEach(async () => {
  for (const server of held.splice(0)) await server.release();
});

afterAll(() => rmSync(folder, { recursive: true }));

describe('the embedded server', () => {
  it('is created with durable commits, in UTC, with a random password only its owner can read', async () => {
    const [settings] = await asSuperuser(
      first,
      'pinset',
      `SELECT current_setting('fsync') AS fsync, current_setting('synchronous_commit') AS commit,
         current_setting('data_checksums') AS checksums, current_setting('TimeZone') AS zone,
         current_setting('listen_addresses') AS listens, pg_get_userbyid(datdba) AS owner
       FROM pg_database WHERE datname = current_database()`,
    );
    expect(settings).toEqual({
      fsync: 'on',
      commit: 'on',
      checksums: 'on',
      zone: 'UTC',
      listens: '127.0.0.1',
      owner: 'pinset_owner',
    });
    const secrets = path.join(path.dirname(first.dataFolder), 'passwords.json');
    expect(statSync(secrets).mode & 0o777).toBe(0o600);
  });

  it('refuses to be entered without its password', async () => {
    const url = new URL(first.urls.superuser);
    url.password = '';
    await hold('second');
    await expect(connected(url.href)).rejects.toThrow(/password/);
  });

  it('runs for as long as somebody holds it and stops with the last', async () => {
    const [one, two] = await Promise.all([hold('one'), hold('two')]);
    expect(one.port).toBe(two.port);
    await one.release();
    expect(await runs(two)).toBe(true);
    await two.release();
    expect(await runs(two)).toBe(false);
  });

  it('keeps every acknowledged row through a kill -9 and answers again on its port', async () => {
    const server = await hold('crash');
    const client = await connected(server.urls.superuser);
    await client.query('CREATE TABLE acknowledged (id int)');
    let acknowledged = 0;
    const writing = (async () => {
      for (;;) {
        await client.query('INSERT INTO acknowledged VALUES ($1)', [acknowledged]);
        acknowledged += 1;
        if (acknowledged === 100) process.kill(serverPid(), 'SIGKILL');
      }
    })();
    await expect(writing).rejects.toThrow();
    await server.lost;

    const again = await hold('after the crash');
    expect(again.port).toBe(server.port);
    const [found] = await asSuperuser<{ rows: number }>(
      again,
      'pinset',
      'SELECT count(*)::int AS rows FROM acknowledged',
    );
    expect(acknowledged).toBeGreaterThanOrEqual(100);
    // The last insert may have been written without its acknowledgement arriving.
    expect([acknowledged, acknowledged + 1]).toContain(found?.rows);
  });

  it('starts in spite of a lock file whose number now belongs to another process', async () => {
    const server = await hold('before');
    const lock = readFileSync(lockFile(), 'utf8').split('\n');
    await server.release();
    const other = spawn('sleep', ['60'], { cwd: '/', ...serverAccount() });
    try {
      writeFileSync(lockFile(), [String(other.pid), ...lock.slice(1)].join('\n'));
      const again = await hold('after');
      expect(serverPid()).not.toBe(other.pid);
      expect(again.port).toBe(server.port);
    } finally {
      other.kill();
    }
  });

  it('does not take a port that somebody else listens on', async () => {
    const server = await hold('before');
    await server.release();
    const { createServer } = await import('node:net');
    const other = createServer().listen(server.port, '127.0.0.1');
    try {
      expect((await hold('after')).port).not.toBe(server.port);
    } finally {
      other.close();
    }
  });
});
