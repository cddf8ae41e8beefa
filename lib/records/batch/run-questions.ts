import type { Question } from '@/lib/base/result';
import { methodWindow } from '../treatment/method-window';
import type { ResolvedBatch } from './resolve-batch';
import type { RunVerdicts } from './run-verdicts';

type Values = NonNullable<Question['values']>;

/** The question about a verdict; nothing about a run that kept to its window, or of which nobody can tell. */
function verdictQuestion(verdict: string, field: string, values: Values): Question | null {
  switch (verdict) {
    case 'cut_short':
      return { field, code: 'run-cut-short', values };
    case 'never_reached':
      return { field, code: 'run-never-reached', values };
    case 'too_hot':
      return { field, code: 'run-too-hot', values };
    case 'ph_low':
      return { field, code: 'run-ph-low', values };
    case 'too_long':
      return { field, code: 'run-too-long', values };
    default:
      return null;
  }
}

/**
 * Asks about treated material whose run did not keep to its method's window, or whose load was still too warm for
 * spawn. Runs without a verdict were asked about before and are not again.
 */
export function runQuestions({ components }: ResolvedBatch, verdicts: RunVerdicts): Question[] {
  return components.flatMap(({ run, method }, index): Question[] => {
    const verdict = run === null ? undefined : verdicts.get(run.id);
    if (run === null || verdict === undefined) return [];
    const field = `components.${index}.treatment`;
    const window = methodWindow(method);
    const loadCelsius = run.loadCelsiusAtSpawning?.toNumber() ?? null;
    const asked = verdictQuestion(verdict, field, { run: run.code });
    const limit = window?.kind === 'heat' ? window.spawnAtOrBelowCelsius : null;
    const warm = limit !== null && loadCelsius !== null && loadCelsius > limit;
    return [
      ...(asked === null ? [] : [asked]),
      ...(warm
        ? [
            {
              field,
              code: 'load-too-warm',
              values: { run: run.code, celsius: `${loadCelsius} °C`, limit: `${limit} °C` },
            },
          ]
        : []),
    ];
  });
}
