import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { answerTrial } from '@/lib/analysis/trials/answer-trial';
import { readTrial } from '@/lib/analysis/trials/read-trial';
import { trialDepartures } from '@/lib/growing/trial-departure';
import type { TrialResultContent } from './trial-result-content';

/** What would be published of an ended trial now; undefined while it runs, so that nobody stops it at a lucky moment. */
export async function buildTrialContent(
  context: ReadContext,
  id: string,
  now: Date,
): Promise<TrialResultContent | undefined> {
  const trial = await context.db.trial.findFirst({
    where: { id, voidedAt: null, endedAt: { not: null } },
    include: { species: true, notes: { orderBy: { notedAt: 'asc' } } },
  });
  const data = trial && (await readTrial(context, id, now));
  if (!trial || !data || !trial.startedAt || !trial.endedAt) return undefined;
  const asOf = now.toISOString();
  const { runs } = data;
  const answer = answerTrial(data, asOf);
  // A detour by text: what is stored is plain data, and the schema wants figures with an index signature.
  const plain = JSON.parse(JSON.stringify(answer)) as TrialResultContent['answer'];
  return {
    form: 1,
    title: trial.title,
    question: trial.question,
    outcome: trial.outcome,
    speciesEn: trial.species.nameEn,
    speciesEs: trial.species.nameEs,
    containerKind: trial.containerKind,
    arms: data.arms.map(({ id: armId, label }) => ({ id: armId, label })),
    sites: new Set(runs.map(({ siteId }) => siteId)).size,
    blocks: trial.blocks ?? 0,
    unitsPerRun: trial.unitsPerRun,
    expectedPercent: Number(trial.expectedPercent),
    differencePoints: Number(trial.differencePoints),
    powerPercent: trial.powerPercent,
    seed: trial.seed ?? '',
    startedAt: trial.startedAt.toISOString(),
    endedAt: trial.endedAt.toISOString(),
    endNote: trial.endNote ?? '',
    planned: runs.length,
    made: runs.filter(({ made }) => made).length,
    departures: trialDepartures.flatMap((kind) => {
      const count = runs.filter(({ departures }) => departures.includes(kind)).length;
      return count === 0 ? [] : [{ kind, runs: count }];
    }),
    notes: trial.notes.map(({ notedAt, note }) => ({ notedAt: notedAt.toISOString(), note })),
    answer: plain,
    asOf,
  };
}
