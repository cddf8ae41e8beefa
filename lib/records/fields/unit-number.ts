import { type Reading, read, type Typed, wrong } from './entry-field';
import { readNumber } from './number-field';

/** A unit by its name in the form, with other ways to type it and its factor to the stored unit. */
export type EntryUnit = {
  readonly name: string;
  readonly written: RegExp;
  readonly toStored: (value: number) => number;
};

/**
 * Reads a number whose unit stands in the text ("12 in") or, failing that, beside it; a number from a script is
 * in the stored unit already.
 */
export function readInUnit(typed: Typed, units: readonly EntryUnit[]): Reading<number> {
  if (typeof typed === 'number') return read(typed);
  for (const unit of units) {
    const match = unit.written.exec(typed.text.trim());
    if (match) return inUnit(typed.text.trim().slice(0, match.index), unit);
  }
  const beside = typed.unit === null ? units[0] : units.find(({ name }) => name === typed.unit);
  return beside ? inUnit(typed.text, beside) : wrong('unit-unknown');
}

function inUnit(text: string, unit: EntryUnit): Reading<number> {
  const number = readNumber({ text, unit: null });
  if (number.kind === 'read') return read(unit.toStored(number.value));
  if (number.code !== 'ambiguous-number' || !number.values) return number;
  const { first, second } = number.values;
  return wrong('ambiguous-number', { first: `${first} ${unit.name}`, second: `${second} ${unit.name}` });
}
