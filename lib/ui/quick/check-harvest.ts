import { todayInZone } from '@/lib/growing/calendar-date';
import { parseCountEntry } from '@/lib/growing/count-entry';
import { formatMass } from '@/lib/growing/format-quantity';
import type { OpenBatch } from '@/lib/growing/open-batch';
import { isImpossibleHarvest, questionHarvest } from '@/lib/growing/question-harvest';
import { formatMassWithTwin } from '../format/mass-text';
import {
  type CheckContext,
  type CheckEntry,
  checkBatchAndDay,
  dayText,
  problem,
  type QuickProblem,
} from './checked-entry';
import { fillPlaces } from './fill-places';
import { type NetMass, readNetMass, sentMass, type TypedMass } from './read-net-mass';
import { type TypedEntry, textAt } from './typed-entry';

const mostFlushes = 60;

export function massAt(typed: TypedEntry, name: string): TypedMass {
  return { text: textAt(typed, `${name}.text`), unit: textAt(typed, `${name}.unit`) };
}

function massProblem(mass: NetMass, { words, person }: CheckContext): QuickProblem[] {
  switch (mass.kind) {
    case 'net':
      return [];
    case 'empty':
      return [problem(words, 'fresh', 'missing')];
    case 'unreadable':
      return [problem(words, 'fresh', 'not-a-number')];
    case 'not-positive':
      return [problem(words, 'fresh', 'not-positive')];
    case 'tare-unreadable':
      return [problem(words, 'tare', 'not-a-number')];
    case 'tare-too-heavy':
      return [problem(words, 'tare', 'tare-too-heavy')];
    case 'two-readings': {
      const [first = '', second = ''] = mass.readings.map((grams) =>
        formatMass(grams, person.massUnit, words.form.locale),
      );
      return [problem(words, 'fresh', 'ambiguous-number', { first, second })];
    }
  }
}

function questions(batch: OpenBatch, grams: number, { words, person, confirmed }: CheckContext) {
  const harvested = {
    containerKind: batch.container,
    unitCount: batch.unitCount,
    liveUnits: batch.liveUnits,
    dryGrams: batch.dryGrams,
    earlierGrams: batch.pickedGrams,
  };
  const mass = (value: number) => formatMass(value, person.massUnit, words.form.locale);
  return {
    impossible: isImpossibleHarvest(harvested, grams),
    open: questionHarvest(harvested, grams).flatMap(({ code, limit, given }) => {
      if (confirmed.includes(code) || code === 'be-low') return [];
      const values =
        code === 'unit-yield-high'
          ? { code: batch.code, given: mass(given), limit: mass(limit) }
          : { code: batch.code, percent: Math.round(given), limit };
      return [{ code, text: fillPlaces(words.ask[code], values) }];
    }),
  };
}

/** Reads a harvest as typed: batch, mass less the crate, flush, day. */
export const checkHarvest: CheckEntry = (typed, context) => {
  const { words, person } = context;
  const { locale } = words.form;
  const names = { batch: 'lines.0.batchId', day: 'weighedOn' };
  const { batch, day, problems } = checkBatchAndDay(typed, context, names);
  const fresh = massAt(typed, 'fresh');
  const tare = massAt(typed, 'tare');
  const mass = readNetMass(fresh, tare, locale);
  problems.splice(batch ? 0 : 1, 0, ...massProblem(mass, context));
  const flush = parseCountEntry(textAt(typed, 'lines.0.flush'));
  if (flush.kind !== 'number' || flush.value < 1 || flush.value > mostFlushes)
    problems.push(problem(words, 'lines.0.flush', 'not-whole'));
  if (problems.length > 0 || !batch || mass.kind !== 'net' || flush.kind !== 'number')
    return { kind: 'wrong', problems };
  const { impossible, open } = questions(batch, mass.net, context);
  if (impossible)
    return { kind: 'wrong', problems: [problem(words, 'fresh', 'too-much-for-batch', { code: batch.code })] };
  if (open.length > 0) return { kind: 'ask', questions: open };
  const latest = batch.lastPickedOn === null || day >= batch.lastPickedOn;
  return {
    kind: 'ready',
    batch,
    after: {
      ...batch,
      pickedGrams: batch.pickedGrams + mass.net,
      ...(latest ? { lastFlush: flush.value, lastPickedOn: day } : {}),
    },
    entryKind: 'weighing',
    input: {
      weighedOn: day,
      fresh: sentMass(fresh, mass.gross, locale),
      ...(mass.tare === 0 ? {} : { tare: sentMass(tare, mass.tare, locale) }),
      lines: [{ batchId: batch.id, flush: flush.value }],
    },
    summary: fillPlaces(words.harvest.saved, {
      mass: formatMassWithTwin(mass.net, person.massUnit, locale),
      code: batch.code,
      flush: flush.value,
      day: dayText(day, todayInZone(batch.timeZone, context.now), words),
    }),
  };
};
