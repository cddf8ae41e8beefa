import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { answerSignal } from '@/lib/records/signal/answer-signal.command';
import { answerSignalInput } from '@/lib/records/signal/answer-signal.input';
import { inOneGo } from './in-one-go';

/** The coordinator has explained the oldest of the last year's short baths; the later ones wait on the watch list. */
export async function answerSignals(coordinator: Actor, siteId: string, today: string): Promise<void> {
  const since = new Date(Date.parse(today) - 360 * 86_400_000);
  const run = await readAs(coordinator, ({ db }) =>
    db.treatmentRun.findFirst({
      where: {
        siteId,
        startedAt: { gte: since },
        endedAt: { not: null },
        method: { kind: 'hot_water_bath' },
      },
      orderBy: { startedAt: 'asc' },
    }),
  );
  if (!run) return;
  await inOneGo(coordinator, async (take) => {
    await take(answerSignalInput, answerSignal, {
      signalKey: `run:${run.id}:cut_short`,
      answer: 'explained',
      words: 'The gas ran out; a second bottle stands beside the burner now.',
    });
  });
}
