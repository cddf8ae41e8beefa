import { z } from 'zod';
import {
  type DataColumns,
  fixedTerms,
  levelOrder,
  type ModelFormula,
  parseFormula,
  randomTerms,
} from './model-formula';

const mixedInput = z.object({
  formula: z.string(),
  fixed_design: z.object({ names: z.array(z.string()) }).optional(),
  factor_levels: z.record(z.string(), z.array(z.string())).optional(),
  data: z.record(z.string(), z.array(z.union([z.string(), z.number(), z.null()]))),
});

/** A case of the mixed-model files, its terms read from the formula and the data. */
export function readMixedCase(input: unknown) {
  const { formula: text, fixed_design, factor_levels, data } = mixedInput.parse(input);
  const formula = parseFormula(text);
  return mixedTerms(formula, data, factor_levels, fixed_design?.names);
}

export function mixedTerms(
  formula: ModelFormula,
  data: DataColumns,
  given?: Readonly<Record<string, readonly string[]>>,
  designNames?: readonly string[],
) {
  const levels = levelOrder(data, given, designNames);
  return {
    formula,
    data,
    levels,
    intercept: formula.intercept,
    fixed: fixedTerms(formula, data, levels),
    random: formula.hasRandomSlopes ? [] : randomTerms(formula, data, levels),
  };
}

/** Throws when an expected key was left without an answer, but for those named: nothing is excused by accident. */
export function requireAnswers(
  expected: unknown,
  computed: Record<string, unknown>,
  except: readonly string[] = [],
): Record<string, unknown> {
  for (const key of Object.keys(z.record(z.string(), z.unknown()).parse(expected))) {
    if (computed[key] === undefined && !except.includes(key)) throw new Error(`no answer for ${key}`);
  }
  return computed;
}

/** Throws with the reason when the library gave one instead of an estimate. */
export function estimated<T extends { readonly kind: string }>(
  result: T,
): Exclude<T, { readonly kind: 'cannot-compute' }> {
  if (!isEstimate(result)) throw new Error(`no estimate: ${JSON.stringify(result)}`);
  return result;
}

function isEstimate<T extends { readonly kind: string }>(
  result: T,
): result is Exclude<T, { readonly kind: 'cannot-compute' }> {
  return result.kind !== 'cannot-compute';
}

/** Named numbers as an object, in the order given. */
export function named<T>(items: readonly T[], name: (item: T) => string, value: (item: T) => unknown) {
  return Object.fromEntries(items.map((item) => [name(item), value(item)]));
}
