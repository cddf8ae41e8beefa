import type { CannotCompute } from '../../stats/outcome';
import type { FitAnswer, FitRequest } from './fit-request';
import { packRequest } from './packed-request';
import { runInThread } from './run-in-thread';

/** Fits a mixed model off the event loop; see `runInThread`. For a time limit pass AbortSignal.timeout(milliseconds). */
export function runFit(request: FitRequest, signal?: AbortSignal): Promise<FitAnswer | CannotCompute> {
  return runInThread<FitAnswer | CannotCompute>(packRequest(request), signal);
}
