import { isDateFormat } from './date-format';
import type { Archive } from './open-archive';
import { TooLong } from './open-archive';
import { readPart } from './read-part';

/** Signs that XML cannot hold are written as _xHHHH_ (ECMA-376 part 1, 22.9.2.19). */
export function unescaped(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9a-fA-F]{4})_/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}

/** Texts that cells share by their number (18.4): parts of a rich text joined, how it is read aloud left out. */
export async function sharedTexts(
  archive: Archive,
  part: string | undefined,
  most: number,
): Promise<string[]> {
  const texts: string[] = [];
  if (part === undefined || !archive.has(part)) return texts;
  let [text, inText, aloud, left] = ['', false, false, most];
  await readPart(await archive.read(part), {
    open: (name) => {
      if (name === 'si') text = '';
      else if (name === 't') inText = true;
      else if (name === 'rPh') aloud = true;
    },
    text: (some) => {
      if (inText && !aloud) text += some;
    },
    close: (name) => {
      if (name === 't') inText = false;
      else if (name === 'rPh') aloud = false;
      if (name !== 'si') return;
      left -= text.length;
      if (left < 0) throw new TooLong('texts');
      texts.push(unescaped(text));
    },
  });
  return texts;
}

/** Whether cells of each style hold days or times, by the number of the style (18.8.10, 18.8.31). */
export async function stylesOfDates(archive: Archive, part: string | undefined): Promise<boolean[]> {
  const patterns = new Map<number, string>();
  const styles: number[] = [];
  if (part === undefined || !archive.has(part)) return [];
  let ofCells = false;
  await readPart(await archive.read(part), {
    open: (name, { numFmtId, formatCode }) => {
      if (name === 'cellXfs') ofCells = true;
      else if (name === 'numFmt' && formatCode !== undefined) patterns.set(Number(numFmtId), formatCode);
      else if (name === 'xf' && ofCells) styles.push(Number(numFmtId ?? 0));
    },
    close: (name) => {
      if (name === 'cellXfs') ofCells = false;
    },
  });
  return styles.map((id) => isDateFormat(id, patterns.get(id)));
}
