const here = 'http://here.invalid';

/** An address of the product, asked of one site or, with undefined, of all; from the first page on. */
export function withSite(address: string, siteId: string | undefined): string {
  const url = new URL(address, here);
  for (const name of ['site', 'page', 'after', 'before']) url.searchParams.delete(name);
  if (siteId !== undefined) url.searchParams.set('site', siteId);
  return url.pathname + url.search;
}
