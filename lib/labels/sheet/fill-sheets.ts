import { labelsPerPage, type SheetLayout } from './sheet-layout';

/** One label on its place: which of the labels, and the place of its page, both counted from 0. */
export type Placed = { readonly label: number; readonly place: number };

/**
 * Puts `count` labels on pages, the first at `firstPlace` (1 is the first place of a full sheet) of the first page.
 *
 * @throws RangeError when the page has no such place
 */
export function fillSheets(layout: SheetLayout, count: number, firstPlace: number): Placed[][] {
  const perPage = labelsPerPage(layout);
  if (!Number.isInteger(firstPlace) || firstPlace < 1 || firstPlace > perPage)
    throw new RangeError(`first place: ${firstPlace}`);
  const pages: Placed[][] = [];
  for (let label = 0; label < count; label += 1) {
    const at = label + firstPlace - 1;
    const page = Math.floor(at / perPage);
    pages[page] = [...(pages[page] ?? []), { label, place: at % perPage }];
  }
  return pages;
}

/** The first place still free on the last page, counted from 1; undefined when that page is full. */
export function nextFreePlace(layout: SheetLayout, count: number, firstPlace: number): number | undefined {
  const used = (count + firstPlace - 1) % labelsPerPage(layout);
  return used === 0 ? undefined : used + 1;
}
