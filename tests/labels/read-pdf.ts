import { createCanvas, type ImageData } from '@napi-rs/canvas';
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

const millimetresPerPoint = 25.4 / 72;

/** Opens a PDF by a reader that shares nothing with what wrote it. */
export function openPdf(content: Uint8Array) {
  return getDocument({ data: content.slice(), verbosity: 0 }).promise;
}

export function pageSizeMm(page: PDFPageProxy): { width: number; height: number } {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  return { width: (right - left) * millimetresPerPoint, height: (top - bottom) * millimetresPerPoint };
}

/** Boxes of what is stroked on a page, in millimetres from its upper left corner: the outlines of labels. */
export async function strokedBoxes(page: PDFPageProxy) {
  const { fnArray, argsArray } = await page.getOperatorList();
  const { height } = pageSizeMm(page);
  const scale = page.userUnit * millimetresPerPoint;
  const boxes: { leftMm: number; topMm: number; widthMm: number; heightMm: number }[] = [];
  for (const [at, operation] of fnArray.entries()) {
    const [painted, , extent] = (argsArray[at] ?? []) as [number, unknown, ArrayLike<number> | undefined];
    if (operation !== OPS.constructPath || painted !== OPS.stroke || !extent) continue;
    const [left = 0, above = 0, right = 0, below = 0] = Array.from(extent, (value) => value * scale);
    // The page is drawn upside down, from its upper left corner.
    boxes.push({ leftMm: left, topMm: above, widthMm: right - left, heightMm: below - above });
  }
  return { boxes, heightMm: height };
}

export async function textOf(page: PDFPageProxy): Promise<string[]> {
  const { items } = await page.getTextContent();
  return items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item.str] : []));
}

/** A part of a page as pixels, as a printer or a scanner of that many dots per inch has it. */
export async function rasterise(
  page: PDFPageProxy,
  box: { leftMm: number; topMm: number; widthMm: number; heightMm: number },
  dotsPerInch: number,
): Promise<ImageData> {
  const viewport = page.getViewport({ scale: dotsPerInch / 72 });
  const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
  const context = canvas.getContext('2d');
  await page.render({ canvas: canvas as never, canvasContext: context as never, viewport }).promise;
  const dots = (millimetres: number) => Math.round((millimetres / 25.4) * dotsPerInch);
  return context.getImageData(dots(box.leftMm), dots(box.topMm), dots(box.widthMm), dots(box.heightMm));
}
