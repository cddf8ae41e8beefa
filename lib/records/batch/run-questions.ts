import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Question } from '@/lib/base/result';
import { judgeRun } from '@/lib/growing/judge-run';
import { methodWindow } from '../treatment/method-window';
import type { ResolvedBatch } from './resolve-batch';

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
 * spawn. Runs in `known` were asked about before and are not again.
 */
export async function runQuestions(
  { db }: ReadContext,
  { components }: ResolvedBatch,
  known: ReadonlySet<string>,
  now: Date,
): Promise<Question[]> {
  const runs = components.flatMap(({ run, method }, index) =>
    run === null || known.has(run.id) ? [] : [{ run, method, index }],
  );
  if (runs.length === 0) return [];
  const readings = await db.treatmentReading.findMany({
    where: { treatmentRunId: { in: runs.map(({ run }) => run.id) }, voidedAt: null },
    orderBy: { readAt: 'asc' },
  });
  return runs.flatMap(({ run, method, index }): Question[] => {
    const field = `components.${index}.treatment`;
    const window = methodWindow(method);
    const loadCelsius = run.loadCelsiusAtSpawning?.toNumber() ?? null;
    const judgement = judgeRun(
      { startedAt: run.startedAt, endedAt: run.endedAt, loadCelsiusAtSpawning: loadCelsius },
      readings
        .filter(({ treatmentRunId }) => treatmentRunId === run.id)
        .map(({ id, readAt, place, celsius, ph }) => ({
          ...{ id, at: readAt, place },
          celsius: celsius?.toNumber() ?? null,
          ph: ph?.toNumber() ?? null,
        })),
      window,
      now,
    );
    const check = judgement.kind === 'none' ? undefined : judgement.check;
    const verdict = check?.kind === 'value' ? check.value.verdict : 'untold';
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
