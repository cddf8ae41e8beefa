import { readerLocale } from '@/lib/base/reader-locale';
import { numberFieldText } from '@/lib/growing/format-quantity';
import type { RepeatView } from '@/lib/records/batch/get-repeat.query';
import type { MassReader } from '../form/mass-units';
import { massValues } from '../form/mass-units';
import { batchValues } from './batch-values';

/** What belongs to the old batch alone and is never carried over. */
const ownOnly = /^(id|revision|note|startedById|inoculatedOn__\w+)$/;

/** The single mass of a batch that was filled from one material, as the mass filled: the one box to weigh into. */
function oneFilledMass({ batch }: RepeatView, reader: MassReader): Record<string, string> {
  const [only, second] = batch.components;
  if (only === undefined || second !== undefined) return {};
  if (only.massStage !== 'filled' || only.grams === null || only.grams !== batch.wetGrams) return {};
  return { 'components.0.mass': '', ...massValues('filledMass', only.grams, reader) };
}

/** The layers that a bed was started with. */
function layers({ batch }: RepeatView, reader: MassReader): Record<string, string> {
  const locale = readerLocale(reader);
  const first = batch.layers.filter(({ laidOn }) => laidOn <= batch.inoculatedOn);
  return Object.assign(
    {},
    ...first.map(({ material, thicknessMm, millilitres }, row) => ({
      [`layers.${row}.material`]: material,
      ...(thicknessMm === null
        ? {}
        : { [`layers.${row}.thickness`]: String(thicknessMm), [`layers.${row}.thickness__unit`]: 'mm' }),
      ...(millilitres === null
        ? {}
        : {
            [`layers.${row}.volume`]: numberFieldText(millilitres / 1000, locale, 3),
            [`layers.${row}.volume__unit`]: 'L',
          }),
    })),
  );
}

/** How each material is treated: by the proposed run where the first one was, else as a method without a run. */
function treatments({ batch, treatment }: RepeatView): Record<string, string> {
  const [first] = batch.components;
  return Object.fromEntries(
    batch.components.map(({ methodId, runId }, row) => {
      const together = methodId === first?.methodId && runId === first.runId;
      const value = together && treatment !== null ? `run:${treatment.runId}` : `method:${methodId}`;
      return [`components.${row}.treatment`, value] as const;
    }),
  );
}

/**
 * What the form of a repeat begins with: everything of the old batch but its day and its note. A measured moisture is
 * of the old batch alone, so the usual one is assumed; a spawn lot of which too little is left is not carried over.
 */
export function repeatValues(repeat: RepeatView, reader: MassReader): Record<string, string> {
  const { batch, today } = repeat;
  const carried = Object.fromEntries(
    Object.entries(batchValues(batch, [], reader)).filter(([name]) => !ownOnly.test(name)),
  );
  const spawn = Object.fromEntries(
    batch.spawn.flatMap(({ lotId }, row) => {
      const kept = repeat.spawn.find((one) => one.lotId === lotId);
      return kept === undefined || kept.enough === false ? [[`spawn.${row}.lotId`, ''] as const] : [];
    }),
  );
  return {
    ...carried,
    ...oneFilledMass(repeat, reader),
    ...treatments(repeat),
    ...layers(repeat, reader),
    ...spawn,
    inoculatedOn__quick: today,
    moistureSource: batch.moistureSource === 'measured' ? 'assumed' : batch.moistureSource,
    moisturePercent: '',
  };
}
