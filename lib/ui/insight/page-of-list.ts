/** Rows of a page of a list that is too long for one. */
export const perPage = 25;

export type PageOfList<Row> = {
  readonly rows: readonly Row[];
  /** How many are listed on all pages. */
  readonly count: number;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  readonly perPage: number;
};

/**
 * A list as one page, or some rows of it where it is longer than `most`.
 *
 * @param asked the page that an address names; one that is not there is the nearest, and no number the first.
 */
export function pageOfList<Row>(
  list: readonly Row[],
  asked: string | readonly string[] | undefined,
  most: number,
): PageOfList<Row> {
  const count = list.length;
  if (count <= most) return { rows: list, count, page: 1, pages: 1, perPage: count };
  const pages = Math.ceil(count / perPage);
  const number = typeof asked === 'string' && /^\d{1,6}$/.test(asked) ? Number(asked) : 1;
  const page = Math.min(Math.max(1, number), pages);
  return { rows: list.slice((page - 1) * perPage, page * perPage), count, page, pages, perPage };
}
