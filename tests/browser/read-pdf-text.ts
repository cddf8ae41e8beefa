import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** All text of a PDF without spaces, as a library reads it that shares nothing with what wrote it. */
export async function readPdfText(content: Uint8Array): Promise<string> {
  const pdf = await getDocument({ data: new Uint8Array(content), verbosity: 0 }).promise;
  let text = '';
  for (let at = 1; at <= pdf.numPages; at += 1) {
    const { items } = await (await pdf.getPage(at)).getTextContent();
    text += items.map((item) => ('str' in item ? item.str : '')).join('');
  }
  return withoutSpaces(text);
}

/** A line may break between any two words. */
export const withoutSpaces = (text: string): string => text.replaceAll(/\s/g, '');
