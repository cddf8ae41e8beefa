/** At most so many rows: those of the site in their order, then the others in theirs. */
export function ofSiteFirst<Row extends { readonly id: string }>(
  ofSite: readonly Row[],
  all: readonly Row[],
  most: number,
): Row[] {
  const first = new Set(ofSite.map(({ id }) => id));
  return [...ofSite, ...all.filter(({ id }) => !first.has(id))].slice(0, most);
}
