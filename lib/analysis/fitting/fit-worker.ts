/**
 * Entry of the thread that fits models: one request in (as workerData), one message out. Can be bundled into one file:
 *   npx esbuild lib/analysis/fitting/fit-worker.ts --bundle --platform=node --format=esm --outfile=fit-worker.mjs
 */
import { parentPort, workerData } from 'node:worker_threads';
import { ArgumentError } from '../../stats/outcome';
import { answerRequest } from './answer-request';
import type { WorkerReply } from './worker-reply';

function reply(): WorkerReply {
  try {
    return { kind: 'done', answer: answerRequest(workerData) };
  } catch (error) {
    if (!(error instanceof ArgumentError)) throw error;
    // The class does not survive the way between threads; its parts do.
    return { kind: 'bad-argument', argument: error.argument, message: error.message };
  }
}

parentPort?.postMessage(reply());
