const perPage = 25;

export type PageOfList<Row> = {
  readonly rows: readonly Row[];
  /** How many are listed on all pages. */
  readonly count: number;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  readonly perPage: number;
};

/** @param asked the page that an address names; one that is not there is the nearest, and no number the first. */
export function pageOfList<Row>(
  list: readonly Row[],
  asked: string | readonly string[] | undefined,
): PageOfList<Row> {
  const pages = Math.max(1, Math.ceil(list.length / perPage));
  const number = typeof asked === 'string' && /^\d{1,6}$/.test(asked) ? Number(asked) : 1;
  const page = Math.min(Math.max(1, number), pages);
  const rows = list.slice((page - 1) * perPage, page * perPage);
  return { rows, count: list.length, page, pages, perPage };
}

/** The whole list as one page. */
export function wholeList<Row>(list: readonly Row[]): PageOfList<Row> {
  return { rows: list, count: list.length, page: 1, pages: 1, perPage: list.length };
}
