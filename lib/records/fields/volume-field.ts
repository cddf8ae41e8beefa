import { z } from 'zod';
import { parseVolumeEntry, type VolumeEntryUnit } from '@/lib/growing/volume-entry';
import { optionalEntryField, type Reader, type Reading, read, wrong } from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

const units = ['L', 'mL', 'gal', 'qt', 'cup'] as const satisfies readonly VolumeEntryUnit[];
const mostMillilitres = 1_000_000_000;

function limited(exact: number): Reading<number> {
  const millilitres = Math.round(exact);
  if (millilitres < 1) return wrong('not-positive');
  return millilitres > mostMillilitres ? wrong('too-large', { max: '1000000 L' }) : read(millilitres);
}

const readMillilitres: Reader<number> = (typed) => {
  if (typeof typed === 'number') return limited(typed);
  const unit = typed.unit === null ? 'L' : units.find((one) => one === typed.unit);
  if (unit === undefined) return wrong('unit-unknown');
  const entry = parseVolumeEntry(typed.text, unit, readerSign());
  if (entry.kind === 'unreadable') return unreadableCode(entry);
  if (entry.kind === 'ambiguous')
    return ambiguous(entry.readings, (litres) => `${Number(litres.toFixed(3))} L`);
  return limited(entry.litres * 1000);
};

const shape = { json: z.int().min(1).max(mostMillilitres), unit: 'Millilitres' } as const;

/** A volume in whole millilitres that may be left out: from `{ text, unit }` with unit L, mL, gal, qt or cup. */
export function optionalVolumeField() {
  return optionalEntryField(readMillilitres, shape);
}
