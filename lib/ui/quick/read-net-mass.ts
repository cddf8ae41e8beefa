import { decimalSignOf, massFieldText } from '@/lib/growing/format-quantity';
import { type MassEntryUnit, massEntryUnits, parseMassEntry } from '@/lib/growing/mass-entry';

/** A mass as typed: the text, and the unit that counts when the text names none. */
export type TypedMass = { readonly text: string; readonly unit: string };

export type NetMass =
  | { readonly kind: 'empty' | 'unreadable' | 'tare-unreadable' | 'not-positive' | 'tare-too-heavy' }
  /** Grams of both readings. */
  | { readonly kind: 'two-readings'; readonly readings: readonly number[] }
  /** All in whole grams. */
  | { readonly kind: 'net'; readonly gross: number; readonly tare: number; readonly net: number };

function unitOf(unit: string): MassEntryUnit {
  return massEntryUnits.find((one) => one === unit) ?? 'kg';
}

/** The mass on the scale less the crate, read as the server will read it; `locale` gives the reader's decimal sign. */
export function readNetMass(fresh: TypedMass, tare: TypedMass, locale: string): NetMass {
  const sign = decimalSignOf(locale);
  const gross = parseMassEntry(fresh.text, unitOf(fresh.unit), sign);
  if (gross.kind === 'unreadable') return { kind: gross.why === 'empty' ? 'empty' : 'unreadable' };
  if (gross.kind === 'ambiguous') return { kind: 'two-readings', readings: gross.readings };
  if (gross.grams === 0) return { kind: 'not-positive' };
  const crate = parseMassEntry(tare.text, unitOf(tare.unit), sign);
  if (crate.kind === 'unreadable' && crate.why === 'empty')
    return { kind: 'net', gross: gross.grams, tare: 0, net: gross.grams };
  if (crate.kind !== 'mass') return { kind: 'tare-unreadable' };
  const net = gross.grams - crate.grams;
  return net > 0 ? { kind: 'net', gross: gross.grams, tare: crate.grams, net } : { kind: 'tare-too-heavy' };
}

/** A mass written so that it has one reading everywhere, whatever decimal sign its reader uses. */
export function settledMass(grams: number, unit: 'kg' | 'lb', locale: string): TypedMass {
  const whole = Math.round(grams);
  const text = massFieldText(whole, unit, locale);
  const entry = parseMassEntry(text, unit);
  return entry.kind === 'mass' && entry.grams === whole ? { text, unit } : { text: `${whole} g`, unit };
}

/**
 * What is sent for a typed mass: its own text, unless that has a second reading for somebody with another decimal
 * sign. An entry may be read days later, when its writer has changed how they write numbers.
 */
export function sentMass(typed: TypedMass, grams: number, locale: string): TypedMass {
  const entry = parseMassEntry(typed.text, unitOf(typed.unit));
  const own = typed.unit === 'lb' || typed.unit === 'oz' ? 'lb' : 'kg';
  return entry.kind === 'mass' ? typed : settledMass(grams, own, locale);
}
