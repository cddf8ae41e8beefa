import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Method, TreatmentRun } from '@/lib/database/generated/client';
import { judgeRun } from '@/lib/growing/judge-run';
import { methodWindow } from '../treatment/method-window';

/** How a treatment run was held against its method's window, by the run's id. */
export type RunVerdicts = ReadonlyMap<string, string>;

// A logger writes thousands of readings of one run.
const atOnce = 20;

/** Holds runs against the windows of their methods; a run that cannot be told is `untold`. */
export async function runVerdicts(
  { db }: ReadContext,
  runs: readonly TreatmentRun[],
  methods: ReadonlyMap<string, Method>,
  now: Date,
): Promise<RunVerdicts> {
  const verdicts = new Map<string, string>();
  for (let from = 0; from < runs.length; from += atOnce) {
    const some = runs.slice(from, from + atOnce);
    const readings = await db.treatmentReading.findMany({
      where: { treatmentRunId: { in: some.map(({ id }) => id) }, voidedAt: null },
      orderBy: { readAt: 'asc' },
    });
    for (const run of some) {
      const method = methods.get(run.methodId);
      const judgement = judgeRun(
        {
          startedAt: run.startedAt,
          endedAt: run.endedAt,
          loadCelsiusAtSpawning: run.loadCelsiusAtSpawning?.toNumber() ?? null,
        },
        readings
          .filter(({ treatmentRunId }) => treatmentRunId === run.id)
          .map(({ id, readAt, place, celsius, ph }) => ({
            ...{ id, at: readAt, place },
            celsius: celsius?.toNumber() ?? null,
            ph: ph?.toNumber() ?? null,
          })),
        method === undefined ? null : methodWindow(method),
        now,
      );
      const check = judgement.kind === 'none' ? undefined : judgement.check;
      verdicts.set(run.id, check?.kind === 'value' ? check.value.verdict : 'untold');
    }
  }
  return verdicts;
}
