import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { compareOne } from '../comparison/compare';
import { type ComparisonChoices, readComparisonChoices } from '../comparison/comparison-choices';
import { together } from '../comparison/comparison-filter.input';
import { type JudgedBatch, judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import type { ShownFigure } from '../shown-figure';
import { batchFaults } from './batch-faults';
import { type LeftOutEffect, leftOutEffect } from './left-out-effect';
import { readBatchNotes } from './read-batch-notes';
import { readLateEntries, readWeighingFaults } from './read-entry-faults';
import { readRuns } from './read-runs';
import { inOrder, type RecordFault } from './record-fault';
import { type RunOfSite, runFaults } from './run-faults';
import { startOfLatest } from './start-of-latest';

export type RecordFaults = {
  readonly choices: ComparisonChoices;
  readonly period: { readonly from: string; readonly to: string };
  readonly faults: readonly RecordFault[];
  /** The treatment runs of the period. */
  readonly runs: readonly RunOfSite[];
  /** One for each kind of container of which something is due, with the rate that is shown of it. */
  readonly effects: readonly (LeftOutEffect & { readonly figure: ShownFigure })[];
  /** The kind of container most used. */
  readonly mainContainer: ContainerKind;
  /** So many of the latest batches at most were looked through, where there are more; the period begins with them. */
  readonly latestOnly: number | undefined;
};

export type RecordFaultsLimits = {
  /** So many of the latest batches at most are looked through. */
  readonly most?: number;
  /** Faults of earlier days are not asked for, so that some of them are not looked for. */
  readonly since?: CalendarDate;
};

/** What can be looked through while somebody waits; networks of a hundred sites begin fewer in the days of the comparison. */
const mostLookedThrough = 10_000;

/**
 * Which records are missing or hard to believe at the actor's sites, of batches inoculated in the days that the
 * comparison opens on (of the latest `most`, where there are more), and what that does to the figures; undefined while
 * there is no batch. Batches, runs and what else was written are read side by side, each in a transaction of its own, since
 * each takes about a third of the time.
 */
export async function readRecordFaults(
  actor: Actor,
  now: Date,
  { most = mostLookedThrough, since = '' }: RecordFaultsLimits = {},
): Promise<RecordFaults | undefined> {
  const opened = await readAs(actor, async (context) => {
    const choices = await readComparisonChoices(context, now);
    const { defaults } = choices;
    return defaults && { choices, defaults, from: await startOfLatest(context, defaults.from, most) };
  });
  if (opened === undefined) return undefined;
  const { choices, defaults, from } = opened;
  // Harvests are weighed after the last batch was inoculated.
  const lastDay = [...choices.today.values()].sort().at(-1) ?? defaults.to;
  const period = { from, to: lastDay > defaults.to ? lastDay : defaults.to };
  const [{ judged, ofBatches }, runs, ofEntries] = await Promise.all([
    readAs(actor, async (context) => {
      const { today } = choices;
      const batches = judgeBatches(await readBatchRows(context, period), today);
      const facts = batches.map((batch) => batch.facts);
      const notes = await readBatchNotes(context, period, facts, today);
      const faulty = batches.flatMap((batch) => {
        const own = notes.get(batch.facts.id);
        return own === undefined ? [] : batchFaults(batch, own);
      });
      return { judged: batches, ofBatches: faulty };
    }),
    readAs(actor, (context) => readRuns(context, period, now)),
    readAs(actor, async (context) => [
      ...(await readWeighingFaults(context, { ...period, from: since > from ? since : from })),
      ...(await readLateEntries(context, period)),
    ]),
  ]);
  const faults = [...ofBatches, ...runs.flatMap(runFaults), ...ofEntries];
  return {
    choices,
    period,
    faults: inOrder(faults),
    runs,
    effects: containerKinds.flatMap((container) => effectOn(container, judged)),
    mainContainer: defaults.container,
    latestOnly: from === defaults.from ? undefined : most,
  };

  function effectOn(container: ContainerKind, all: readonly JudgedBatch[]) {
    const effect = leftOutEffect(container, all);
    if (effect.due + effect.yieldDue === 0) return [];
    const filter = { ...period, container, species: together, material: together, method: undefined };
    // The batches of one site are held together by their runs, those of several by their sites.
    const site = choices.sites.length === 1 ? choices.sites[0]?.id : undefined;
    const own = all.filter(({ facts }) => facts.containerKind === container);
    return [{ ...effect, figure: compareOne(own, { ...filter, site }, now.toISOString()).contamination }];
  }
}
