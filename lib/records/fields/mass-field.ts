import { z } from 'zod';
import { type MassEntryUnit, massEntryUnits, parseMassEntry } from '@/lib/growing/mass-entry';
import {
  entryField,
  optionalEntryField,
  type Reader,
  type Reading,
  read,
  type Typed,
  wrong,
} from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

export type MassLimits = {
  /** Highest mass allowed, grams; 100 t unless said otherwise. */
  readonly mostGrams?: number;
  /** Whether 0 may be entered. */
  readonly zero?: boolean;
};

/** A mass with what was typed, kept beside it where the table has a place for it. */
export type EnteredMass = {
  readonly grams: number;
  readonly entered: { readonly text: string; readonly unit: string } | null;
};

const largestGrams = 100_000_000;

function massShape({ mostGrams = largestGrams, zero = false }: MassLimits) {
  return {
    json: z
      .int()
      .min(zero ? 0 : 1)
      .max(mostGrams),
    unit: 'Grams',
  } as const;
}

function isMassUnit(unit: string): unit is MassEntryUnit {
  return (massEntryUnits as readonly string[]).includes(unit);
}

/** Grams in words that say the unit, for a message that a catalogue embeds. */
function spoken(grams: number): string {
  return grams >= 1000 ? `${Number((grams / 1000).toFixed(3))} kg` : `${Number(grams.toFixed(1))} g`;
}

function limited(grams: number, { mostGrams = largestGrams, zero = false }: MassLimits): Reading<number> {
  const whole = Math.round(grams);
  if (grams < 0) return wrong(zero ? 'negative' : 'not-positive');
  if (whole === 0 && !(zero && grams === 0)) return wrong('not-positive');
  if (whole > mostGrams) return wrong('too-large', { max: spoken(mostGrams) });
  return read(whole);
}

function readMass(typed: Typed, limits: MassLimits): Reading<EnteredMass> {
  if (typeof typed === 'number') {
    if (!Number.isInteger(typed)) return wrong('not-whole');
    const grams = limited(typed, limits);
    return grams.kind === 'read' ? read({ grams: grams.value, entered: null }) : grams;
  }
  const unit = typed.unit ?? 'kg';
  if (!isMassUnit(unit)) return wrong('unit-unknown');
  const entry = parseMassEntry(typed.text, unit, readerSign());
  if (entry.kind === 'unreadable') return unreadableCode(entry);
  if (entry.kind === 'ambiguous') return ambiguous(entry.readings, spoken);
  const grams = limited(entry.grams, limits);
  return grams.kind === 'read'
    ? read({ grams: grams.value, entered: { text: typed.text.trim(), unit } })
    : grams;
}

function enteredReader(limits: MassLimits): Reader<EnteredMass> {
  return (typed) => readMass(typed, limits);
}

function gramsReader(limits: MassLimits): Reader<number> {
  return (typed) => {
    const mass = readMass(typed, limits);
    return mass.kind === 'read' ? read(mass.value.grams) : mass;
  };
}

/** A mass in whole grams: from `{ text, unit }` with unit kg, g, lb or oz, or from a number of grams. */
export function massField(limits: MassLimits = {}) {
  return entryField(gramsReader(limits), massShape(limits));
}

/** A mass that may be left out; blank is null. */
export function optionalMassField(limits: MassLimits = {}) {
  return optionalEntryField(gramsReader(limits), massShape(limits));
}

/** A mass with what was typed. */
export function enteredMassField(limits: MassLimits = {}) {
  return entryField(enteredReader(limits), massShape(limits));
}

/** A mass with what was typed, that may be left out; blank is null. */
export function optionalEnteredMassField(limits: MassLimits = {}) {
  return optionalEntryField(enteredReader(limits), massShape(limits));
}
