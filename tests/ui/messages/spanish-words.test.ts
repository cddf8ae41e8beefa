import { describe, expect, test } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { leaves } from './message-arguments';

const english = leaves(loadMessages('en'));
const spanish = leaves(loadMessages('es'));

/** What is not said in Spanish, and the one word for the thing. In files "masa" is the quantity, on pages "peso". */
const otherWords: readonly (readonly [RegExp, string, RegExp?])[] = [
  [/\btandas?\b/i, 'tratamiento (a load treated in one go), lote (a batch)'],
  [/\bpartidas?\b/i, 'lote de semilla, lote de material'],
  [/\blotes? de siembra\b/i, 'lote, or lote de cultivo beside lots of spawn and material'],
  [/\blotes? de (micelio|inóculo|blanco)\b/i, 'lote de semilla'],
  [/\blotes? de (sustrato|substrato)\b/i, 'lote de material'],
  [/\bsetas?\b/i, 'hongos'],
  [/\bpesajes?\b/i, 'pesada'],
  [/\bplazos?\b/i, 'ventana'],
  [/\bintegrantes?\b/i, 'miembro'],
  [/\bmasas?\b/i, 'peso', /^export\./],
];

const saysBatch = /\bbatch(es)?\b/i;
const saysLot = /\blots?\b/i;

/** Sentences that use another word than the one for the thing: the key, what stands there and what to say. */
function mixedWords(text: string, key: string): string[] {
  return otherWords.flatMap(([word, say, except]) =>
    word.test(text) && !except?.test(key) ? [`${key}: "${text}" – say ${say}`] : [],
  );
}

/** A sentence about a batch and a lot, in whose Spanish both would be "lote". */
function cannotBeToldApart(here: string, there: string): boolean {
  return saysBatch.test(here) && saysLot.test(here) && /\blotes?\b/i.test(there)
    ? !/\blotes? de cultivo\b/i.test(there)
    : false;
}

describe('Spanish says one thing with one word', () => {
  test('in every sentence of the catalogue', () => {
    expect([...spanish].flatMap(([key, text]) => mixedWords(text, key))).toEqual([]);
  });

  test('and says "lote de cultivo" where a batch stands beside a lot of spawn or material', () => {
    const mixed = [...english].filter(([key, text]) => cannotBeToldApart(text, spanish.get(key) ?? ''));
    expect(mixed.map(([key]) => `${key}: ${spanish.get(key)}`)).toEqual([]);
  });

  test('and calls only the fungus itself "micelio", spawn is "semilla"', () => {
    const mixed = [...spanish].filter(
      ([key, text]) => /\bmicelio\b/i.test(text) && !/\bmyceli/i.test(english.get(key) ?? ''),
    );
    expect(mixed).toEqual([]);
  });

  test('and would be caught saying another', () => {
    expect(mixedWords('Otra vez la tanda {code}', 'batches.repeat')).toHaveLength(1);
    expect(mixedWords('Masa fresca', 'report.columns.fresh')).toHaveLength(1);
    expect(mixedWords('Masa fresca', 'export.columns.freshGrams.name')).toEqual([]);
    expect(cannotBeToldApart('Code of the lot in the batch', 'Código del lote del lote')).toBe(true);
    expect(cannotBeToldApart('Code of the lot in the batch', 'Código del lote del lote de cultivo')).toBe(
      false,
    );
  });
});
