import { type DecimalSign, decimalReadings } from './decimal-reading';
import { plainEntryText } from './entry-text';

/** Why an entry cannot be read; screens turn the code into what to type instead. */
export type UnreadableWhy =
  | 'empty'
  | 'too-long'
  | 'not-a-number'
  | 'negative'
  | 'more-than-one-number'
  | 'unknown-unit'
  | 'part-too-large'
  | 'not-whole'
  | 'too-small'
  | 'too-large';

export type Unreadable = { readonly kind: 'unreadable'; readonly why: UnreadableWhy };

export function unreadable(why: UnreadableWhy): Unreadable {
  return { kind: 'unreadable', why };
}

/** One number with its unit, as understood. */
export type QuantityPart<Unit extends string> = { readonly amount: number; readonly unit: Unit };

export type QuantityGrammar<Unit extends string> = {
  /** Unit words in lower case without a closing full stop, and the unit they mean. */
  readonly words: Readonly<Record<string, Unit>>;
  readonly defaultUnit: Unit;
  /** Pairs written together, larger first ("2 lb 3 oz"), and how many of the smaller make one of the larger. */
  readonly compounds?: readonly { readonly large: Unit; readonly small: Unit; readonly ratio: number }[];
  readonly allowNegative?: boolean;
  /** The decimal sign of the reader's own region, if it should settle "1,250" or "1.250". */
  readonly decimalSign?: DecimalSign | null;
};

/** Every way to understand the entry, each as one part or a compound's two; never an empty list. */
export type QuantityReadings<Unit extends string> =
  | {
      readonly kind: 'readings';
      readonly readings: readonly (readonly QuantityPart<Unit>[])[];
      readonly unitTyped: boolean;
    }
  | Unreadable;

type Token =
  | { readonly kind: 'number'; readonly readings: readonly number[]; readonly negative: boolean }
  | { readonly kind: 'word'; readonly word: string };

const tokenShape =
  /([+-]?) ?(?:(\d{1,4}) +)?(\d{1,4})\/(\d{1,4})(?![\d/])|([+-]?) ?((?:\d|[.,\u066b](?=\d))(?:[\d.,\u066b\u066c]| (?=\d{3}(?![\d/])))*)|([\p{L}°%'"#]+)[.,;:]?/uy;

function tokenOf(match: RegExpExecArray, sign: DecimalSign | null): Token {
  const [, fractionSign, whole, top, bottom, numberSign, digits, word] = match;
  if (word !== undefined) return { kind: 'word', word };
  if (top !== undefined && bottom !== undefined) {
    const value = Number(whole ?? 0) + Number(top) / Number(bottom);
    return {
      kind: 'number',
      readings: Number.isFinite(value) ? [value] : [],
      negative: fractionSign === '-',
    };
  }
  // A sign left hanging at the end ("3, ", "5.") ends the number, it is no part of it.
  const bare = (digits ?? '').replace(/(\d)[.,]$/, '$1');
  return { kind: 'number', readings: decimalReadings(bare, sign), negative: numberSign === '-' };
}

function tokens(text: string, sign: DecimalSign | null): readonly Token[] | null {
  const found: Token[] = [];
  let at = 0;
  while (at < text.length) {
    if (/\s/.test(text.charAt(at))) {
      at += 1;
      continue;
    }
    tokenShape.lastIndex = at;
    const match = tokenShape.exec(text);
    if (!match) return null;
    found.push(tokenOf(match, sign));
    at = tokenShape.lastIndex;
  }
  return found;
}

function single<Unit extends string>(token: Token & { kind: 'number' }, unit: Unit) {
  return token.readings.map((amount) => [{ amount: token.negative ? -amount : amount, unit }]);
}

/**
 * Reads a number with an optional unit as people type, paste or let a scale type it.
 * Accepts both decimal signs, thousands grouped by sign or space, digits of any script, fractions ("2 1/2"), the unit
 * before or after, and compounds ("2 lb 3 oz"). Whatever has two readings is answered with both; nothing is guessed.
 * "2 lb 3" reads as 2 lb 3 oz and as 2.3 lb.
 */
export function readQuantity<Unit extends string>(
  text: string,
  grammar: QuantityGrammar<Unit>,
): QuantityReadings<Unit> {
  const plain = plainEntryText(text);
  if (plain === null) return unreadable('too-long');
  if (plain === '') return unreadable('empty');
  const list = tokens(plain, grammar.decimalSign ?? null);
  if (list === null) return unreadable('not-a-number');
  const numbers = list.filter((token) => token.kind === 'number');
  if (numbers.length === 0 || numbers.some((token) => token.readings.length === 0)) {
    return unreadable('not-a-number');
  }
  const units: Unit[] = [];
  for (const token of list) {
    if (token.kind !== 'word') continue;
    const unit = Object.hasOwn(grammar.words, token.word) ? grammar.words[token.word] : undefined;
    if (unit === undefined) return unreadable('unknown-unit');
    units.push(unit);
  }
  const shape = list.map((token) => (token.kind === 'number' ? 'n' : 'u')).join('');
  const [first, second] = numbers;
  const [unit, smaller] = units;
  if (first === undefined) return unreadable('not-a-number');
  if (shape === 'n' || shape === 'nu' || shape === 'un') {
    if (first.negative && !grammar.allowNegative) return unreadable('negative');
    const readings = single(first, unit ?? grammar.defaultUnit);
    return { kind: 'readings', readings, unitTyped: unit !== undefined };
  }
  if ((shape !== 'nunu' && shape !== 'nun') || second === undefined || unit === undefined) {
    return unreadable(numbers.length > 1 ? 'more-than-one-number' : 'not-a-number');
  }
  if (first.negative || second.negative) return unreadable('more-than-one-number');
  return readCompound(grammar, first.readings, unit, second.readings, smaller);
}

function readCompound<Unit extends string>(
  grammar: QuantityGrammar<Unit>,
  large: readonly number[],
  unit: Unit,
  small: readonly number[],
  smallUnit: Unit | undefined,
): QuantityReadings<Unit> {
  const pair = grammar.compounds?.find(
    (one) => one.large === unit && (smallUnit === undefined || one.small === smallUnit),
  );
  // The larger part is whole, so "1,250 lb 3 oz" has one reading; "1,000 lb 3 oz" still has two.
  const wholes = large.filter(Number.isInteger);
  if (!pair || wholes.length === 0) return unreadable('more-than-one-number');
  const fitting = small.filter((amount) => amount < pair.ratio);
  if (fitting.length === 0) return unreadable('part-too-large');
  const decimals = smallUnit === undefined && Number.isInteger(small[0]) ? small[0] : undefined;
  const readings = wholes.flatMap((whole): QuantityPart<Unit>[][] => [
    ...fitting.map((amount) => [
      { amount: whole, unit },
      { amount, unit: pair.small },
    ]),
    ...(decimals === undefined ? [] : [[{ amount: Number(`${whole}.${decimals}`), unit }]]),
  ]);
  return { kind: 'readings', readings, unitTyped: true };
}
