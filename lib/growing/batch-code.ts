/**
 * Letters and digits that stay apart when handwritten, worn or read aloud over the phone, in English and Spanish.
 * Left out: 0 O Q D, 1 I L J, 2 Z, 5 S, 8 B, U V W Y, M N (as spoken), G 6, 9 (upside-down 6).
 */
const codeLetters = 'ACEFHKPRTX';
const codeDigits = '347';
const lettersPerCode = 3;

/** A source of whole numbers from 0 up to but not including `below`; seeded in tests and in the demo. */
export type RandomBelow = (below: number) => number;

/**
 * Draws a human code such as KTR-7 or KTR-473: three letters, then one to six digits. With `digits` = 1 there are
 * 3,000 codes, each further digit triples them. Uniqueness is the caller's (the network's) business: on a clash
 * draw again, with more digits once clashes are common.
 */
export function drawBatchCode(randomBelow: RandomBelow, digits = 3): string {
  if (!Number.isInteger(digits) || digits < 1 || digits > 6) throw new RangeError(`digits: ${digits}`);
  const draw = (alphabet: string, count: number) =>
    Array.from({ length: count }, () => alphabet.charAt(randomBelow(alphabet.length))).join('');
  return `${draw(codeLetters, lettersPerCode)}-${draw(codeDigits, digits)}`;
}

const spoken = new RegExp(`^([${codeLetters}]{${lettersPerCode}})([${codeDigits}]{1,6})$`);

/**
 * Reads a code as people type it: any case, with or without hyphen, spaces, dots or a leading #.
 * Answers the one written form (KTR-7), or null when it cannot be a code. Nothing is guessed from look-alikes:
 * an O is not a code letter, so the reader is asked again.
 */
export function parseBatchCode(text: string): string | null {
  if (text.length > 40) return null;
  const bare = text
    .normalize('NFKC')
    .replace(/[\s\-_.#\u2010-\u2015]/g, '')
    .toUpperCase();
  const parts = spoken.exec(bare);
  return parts ? `${parts[1]}-${parts[2]}` : null;
}
