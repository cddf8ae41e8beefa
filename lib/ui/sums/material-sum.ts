import { batchEntries } from './batch-entries';
import type { SumAnswer, SumInput } from './sum-input';
import { waterLines } from './water-sum';

/**
 * Water that each material weighed before treatment takes up to reach the moisture wanted: the one typed, else the
 * usual one of that material after that treatment.
 */
export function materialSum(input: SumInput): SumAnswer {
  const batch = batchEntries(input);
  if (batch === undefined) return { lines: [] };
  const wanted = batch.entries.percent('plan.targetMoisture');
  const lines = batch.components.flatMap(({ row, role, grams, massStage, asReceived, drainedPercent }) => {
    const target = wanted ?? drainedPercent;
    if (role === 'additive' || massStage !== 'before_treatment') return [];
    if (grams === null || asReceived.percent === null || target === null) return [];
    return waterLines(input, grams, asReceived.percent, target).map((line) => ({
      ...line,
      key: `${row} ${line.key}`,
    }));
  });
  return { lines };
}
