import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { freePort, isFree } from '@/lib/database/embedded/free-port';

const preload = path.resolve(import.meta.dirname, '../../lib/launch/stop-with-parent.mjs');

/** A command that starts a server with the preload and passes on what the server tells it. */
const command = (port: number) => `
  const { spawn } = require('node:child_process');
  const server = "require('node:http').createServer().listen(${port}, '127.0.0.1')";
  const child = spawn(process.execPath, ['--import', ${JSON.stringify(preload)}, '-e', server],
    { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  child.on('message', (message) => process.send(message));
`;

let parent: ChildProcess | undefined;
afterEach(() => parent?.kill('SIGKILL'));

describe('an application started by a command', () => {
  it('tells the command when it listens, and frees its port when the command is killed', async () => {
    const port = await freePort(47_100);
    parent = spawn(process.execPath, ['-e', command(port)], {
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    });
    const [message] = await once(parent, 'message');
    expect(message).toMatchObject({ listening: { port } });
    expect(await isFree(port)).toBe(false);
    parent.kill('SIGKILL');
    for (let wait = 0; wait < 50 && !(await isFree(port)); wait += 1) await pause(100);
    expect(await isFree(port)).toBe(true);
  });
});
