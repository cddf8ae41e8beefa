import path from 'node:path';
import { ArgumentError, type CannotCompute } from '../../stats/outcome';
import type { FitAnswer, FitRequest } from './fit-request';
import type { WorkerReply } from './worker-reply';

/**
 * Fits a mixed model in a thread of its own, so that a long fit never holds up other requests.
 *
 * The thread runs `fit-worker.ts` from the source tree (under the project's root, the working directory) through tsx, or the
 * bundled file that PINSET_FIT_WORKER names, which starts faster.
 *
 * @param signal ends the thread at once; the promise then rejects with the signal's reason. For a time limit pass
 *   AbortSignal.timeout(milliseconds).
 * @throws ArgumentError as the fit itself would; any other failure of the thread as it came.
 */
export async function runFit(request: FitRequest, signal?: AbortSignal): Promise<FitAnswer | CannotCompute> {
  signal?.throwIfAborted();
  const file = process.env.PINSET_FIT_WORKER ?? 'lib/analysis/fitting/fit-worker-from-source.mjs';
  // A bundler that sees which file a thread starts from would take in the whole tree; this one is started from source.
  const { Worker } = await import(/* turbopackIgnore: true */ 'node:worker_threads');
  const worker = new Worker(path.resolve(file), { workerData: request });
  let stop: (() => void) | undefined;
  try {
    const reply = await new Promise<WorkerReply>((resolve, reject) => {
      stop = () => reject(signal?.reason);
      signal?.addEventListener('abort', stop, { once: true });
      worker.once('message', resolve);
      worker.once('error', reject);
      worker.once('exit', (code) => reject(new Error(`the fitting thread ended early with code ${code}`)));
    });
    if (reply.kind === 'done') return reply.answer;
    throw new ArgumentError(reply.argument, reply.message.slice(reply.argument.length + 2));
  } finally {
    if (stop) signal?.removeEventListener('abort', stop);
    await worker.terminate();
  }
}
