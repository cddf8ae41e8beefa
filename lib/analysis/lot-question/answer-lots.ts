import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { judgeOrigins } from './judge-origins';
import type { LotsAnswer } from './lots-answer';
import { spawnLots } from './origin-kinds';

/** Every spawn lot against what its sites and methods would have lost anyway. */
export async function answerLots(given: readonly ModelBatch[], fitModel: Fit): Promise<LotsAnswer> {
  const answer = await judgeOrigins(given, spawnLots, fitModel);
  if (answer.kind === 'cannot') return answer;
  return {
    kind: 'judged',
    leftOut: answer.leftOut,
    lots: answer.origins.map(({ origin, lots: _one, verdict, ...judged }) => ({
      ...{ lotId: origin, ...judged },
      verdict: verdict === 'loses-more' ? verdict : 'as-expected',
    })),
  };
}
