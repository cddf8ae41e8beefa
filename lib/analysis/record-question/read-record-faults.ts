import 'server-only';
import type { ReadContext } from '@/lib/access/context';
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
 * there is no batch.
 */
export async function readRecordFaults(
  context: ReadContext,
  now: Date,
  { most = mostLookedThrough, since = '' }: RecordFaultsLimits = {},
): Promise<RecordFaults | undefined> {
  const choices = await readComparisonChoices(context, now);
  const { defaults } = choices;
  if (defaults === undefined) return undefined;
  // Harvests are weighed after the last batch was inoculated.
  const lastDay = [...choices.today.values()].sort().at(-1) ?? defaults.to;
  const from = await startOfLatest(context, defaults.from, most);
  const period = { from, to: lastDay > defaults.to ? lastDay : defaults.to };
  const judged = judgeBatches(await readBatchRows(context, period), choices.today);
  const facts = judged.map((batch) => batch.facts);
  const notes = await readBatchNotes(context, period, facts, choices.today);
  const runs = await readRuns(context, period, now);
  const faults = [
    ...judged.flatMap((batch) => {
      const own = notes.get(batch.facts.id);
      return own === undefined ? [] : batchFaults(batch, own);
    }),
    ...runs.flatMap(runFaults),
    ...(await readWeighingFaults(context, { ...period, from: since > from ? since : from })),
    ...(await readLateEntries(context, period)),
  ];
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
