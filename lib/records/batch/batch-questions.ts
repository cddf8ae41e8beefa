import type { Question } from '@/lib/base/result';
import type { Language } from '@/lib/database/generated/enums';
import { daysBetween } from '@/lib/growing/calendar-date';
import type { SuitabilityTable } from '@/lib/growing/check-suitability';
import type { DerivedBatch } from '@/lib/growing/derive-batch';
import { spawnPercentOfWet } from '@/lib/growing/spawn-rate';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { asCalendarDate } from '../fields/stored-date';
import type { BatchInput } from './batch-fields.input';
import type { ResolvedBatch } from './resolve-batch';
import { suitabilityQuestions } from './suitability-questions';

// Common practice, all of them: outside these a slip of the scale or the decimal sign is likelier.
const usualKgPerUnit: Readonly<Record<ContainerKind, number>> = {
  bag: 25,
  bucket: 25,
  tray: 60,
  bed: 2_000,
  log: 60,
  block: 10,
};
const usualMoisture = { soaked: { from: 45, to: 85 }, wood: { from: 25, to: 75 } } as const;
const usualSpawnPercent = { from: 0.5, to: 40 } as const;
const longAgoDays = 400;

function massQuestions(
  input: BatchInput,
  { wetGrams, moisturePercent, spawnGrams }: DerivedBatch,
): Question[] {
  const questions: Question[] = [];
  const perUnit = wetGrams === null ? null : wetGrams / input.unitCount;
  if (perUnit !== null && perUnit > usualKgPerUnit[input.containerKind] * 1000)
    questions.push({
      field: 'filledMass',
      code: 'mass-per-unit-large',
      values: { grams: `${Number((perUnit / 1000).toFixed(1))} kg` },
    });
  const wood = input.containerKind === 'log' || input.containerKind === 'bed';
  const usual = wood ? usualMoisture.wood : usualMoisture.soaked;
  const measured = input.moistureSource === 'measured' ? moisturePercent : null;
  if (measured !== null && (measured < usual.from || measured > usual.to))
    questions.push({ field: 'moisturePercent', code: 'moisture-unusual', values: { percent: measured } });
  const rate = spawnPercentOfWet(spawnGrams, wetGrams);
  if (rate.kind === 'value' && !wood) {
    const percent = Number(rate.value.toFixed(1));
    if (rate.value < usualSpawnPercent.from || rate.value > usualSpawnPercent.to)
      questions.push({ field: 'spawn.0.mass', code: 'spawn-rate-unusual', values: { percent } });
  }
  return questions;
}

function dateQuestions(input: BatchInput, resolved: ResolvedBatch, today: string): Question[] {
  const questions: Question[] = [];
  const days = daysBetween(input.inoculatedOn, today);
  if (days > longAgoDays) questions.push({ field: 'inoculatedOn', code: 'date-long-ago', values: { days } });
  for (const [index, { lot }] of resolved.components.entries()) {
    const receivedOn = asCalendarDate(lot.receivedOn);
    if (receivedOn > input.inoculatedOn)
      questions.push({
        field: `components.${index}.lotId`,
        code: 'lot-received-later',
        values: { lot: lot.code, date: receivedOn },
      });
  }
  for (const [index, { lot }] of resolved.spawn.entries()) {
    const from = lot.receivedOn ?? lot.madeOn;
    if (from !== null && asCalendarDate(from) > input.inoculatedOn)
      questions.push({
        field: `spawn.${index}.lotId`,
        code: 'lot-received-later',
        values: { lot: lot.code, date: asCalendarDate(from) },
      });
  }
  return questions;
}

/** What is possible but unlikely about a batch, for the person who typed it to confirm. */
export function batchQuestions(
  input: BatchInput,
  resolved: ResolvedBatch,
  derived: DerivedBatch,
  reader: { readonly today: string; readonly language: Language; readonly table: SuitabilityTable },
): Question[] {
  return [
    ...dateQuestions(input, resolved, reader.today),
    ...suitabilityQuestions(resolved, reader.table, reader.language),
    ...massQuestions(input, derived),
  ];
}
