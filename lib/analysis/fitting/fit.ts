import type { CannotCompute } from '../../stats/outcome';
import type { FitAnswer, FitRequest } from './fit-request';

/** However a model is fitted: in a thread of its own (`runFit`), or here and now in a test. */
export type Fit = (request: FitRequest) => Promise<FitAnswer | CannotCompute>;
