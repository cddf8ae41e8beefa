import { decimalSignOf, formatMass, massEcho } from '@/lib/growing/format-quantity';
import { type MassEntryUnit, massEntryUnits, parseMassEntry } from '@/lib/growing/mass-entry';
import type { FormWords } from './form-words';

function isMassUnit(unit: string): unit is MassEntryUnit {
  return (massEntryUnits as readonly string[]).includes(unit);
}

/** Fills the two places of a sentence. */
function fill(sentence: string, first: string, second: string): string {
  return sentence.replace('{first}', first).replace('{second}', second);
}

/**
 * What a mass field understood, in both units, before anything is sent: "1.36 kg, that is 3 lb 0 oz". Two readings
 * are both named; nothing typed gives ''. The server reads the same text by the same rules.
 */
export function massEchoText(text: string, unit: string, words: FormWords): string {
  if (text.trim() === '' || !isMassUnit(unit)) return '';
  const entry = parseMassEntry(text, unit, decimalSignOf(words.locale));
  const own = unit === 'lb' || unit === 'oz' ? 'lb' : 'kg';
  switch (entry.kind) {
    case 'unreadable':
      return words.notUnderstood;
    case 'ambiguous': {
      const [first = 0, second = 0] = entry.readings;
      return fill(
        words.twoReadings,
        formatMass(first, own, words.locale),
        formatMass(second, own, words.locale),
      );
    }
    case 'mass': {
      const echo = massEcho(entry.grams, own, words.locale);
      return fill(words.understood, echo.own, echo.twin);
    }
  }
}
