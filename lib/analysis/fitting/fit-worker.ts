/**
 * Entry of the thread that fits models and works out chart widths: one request in (as workerData), one message out. Can be bundled into one file:
 *   npx esbuild lib/analysis/fitting/fit-worker.ts --bundle --platform=node --format=esm --outfile=fit-worker.mjs
 */
import { setPriority } from 'node:os';
import { parentPort, workerData } from 'node:worker_threads';
import { ArgumentError } from '../../stats/outcome';
import { answerRequest } from './answer-request';
import { answerWidths } from './chart-widths';
import { unpackRequest } from './packed-request';
import type { ThreadJob, WorkerReply } from './worker-reply';

function reply(): WorkerReply {
  try {
    const job: ThreadJob = workerData;
    return {
      kind: 'done',
      answer: job.kind === 'chart-widths' ? answerWidths(job) : answerRequest(unpackRequest(job)),
    };
  } catch (error) {
    if (!(error instanceof ArgumentError)) throw error;
    // The class does not survive the way between threads; its parts do.
    return { kind: 'bad-argument', argument: error.argument, message: error.message };
  }
}

/** Pages go first: two fits at once would otherwise leave them a third of a machine of two processors. */
const behindPages = 5;
// On Linux this is the priority of the calling thread alone; elsewhere it would be that of the whole server.
if (process.platform === 'linux') setPriority(behindPages);

parentPort?.postMessage(reply());
