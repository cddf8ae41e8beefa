import type { InsightWords } from './insight-words';

/** Methods by id as a list inside a sentence: "hot-water bath and steam", by name. */
export function methodList(methods: readonly string[], { inSentence, language }: InsightWords): string {
  const names = methods.map(inSentence).sort((a, b) => a.localeCompare(b, language));
  return new Intl.ListFormat(language, { type: 'conjunction' }).format(names);
}

/** A biological efficiency as fresh mass from 10 of dry material, in the same unit: 65 % is 6.5 kg from 10 kg. */
export function perTen(bePercent: number, { number }: InsightWords, digits = 1): string {
  return number(bePercent / 10, digits);
}

/** A name as inside a sentence: "oyster mushroom", but "EM soak". */
export function asInside(name: string): string {
  const [first = '', second = ''] = name;
  return second === second.toLowerCase() ? first.toLowerCase() + name.slice(1) : name;
}
