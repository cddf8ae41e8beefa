import { existsSync } from 'node:fs';
import path from 'node:path';
import { ArgumentError } from '../../stats/outcome';
import type { ThreadJob, WorkerReply } from './worker-reply';

const bundled = 'fit-worker.mjs';
const fromSource = 'lib/analysis/fitting/fit-worker-from-source.mjs';

function workerFile(): string {
  return process.env.PINSET_FIT_WORKER ?? (existsSync(bundled) ? bundled : fromSource);
}

/**
 * Works something out in a thread of its own, so that it never holds up other requests. The built application brings the
 * thread's code along in one file, `fit-worker.mjs` in the folder that it runs in; PINSET_FIT_WORKER names another. Without
 * either the thread runs from the source tree through tsx, as in development and in tests.
 *
 * @param signal ends the thread at once; the promise then rejects with the signal's reason.
 * @throws ArgumentError as the work itself would; any other failure of the thread as it came.
 */
export async function runInThread<Answer>(job: ThreadJob, signal?: AbortSignal): Promise<Answer> {
  signal?.throwIfAborted();
  const file = workerFile();
  // A bundler that sees which file a thread starts from would take in the whole tree; this one is started from source.
  const { Worker } = await import(/* turbopackIgnore: true */ 'node:worker_threads');
  const worker = new Worker(path.resolve(file), { workerData: job });
  let stop: (() => void) | undefined;
  try {
    const reply = await new Promise<WorkerReply>((resolve, reject) => {
      stop = () => reject(signal?.reason);
      signal?.addEventListener('abort', stop, { once: true });
      worker.once('message', resolve);
      worker.once('error', reject);
      worker.once('exit', (code) => reject(new Error(`the fitting thread ended early with code ${code}`)));
    });
    // The worker answers the kind of job it was given.
    if (reply.kind === 'done') return reply.answer as Answer;
    throw new ArgumentError(reply.argument, reply.message.slice(reply.argument.length + 2));
  } finally {
    if (stop) signal?.removeEventListener('abort', stop);
    await worker.terminate();
  }
}
