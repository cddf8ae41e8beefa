const here = 'http://here.invalid';

type Given = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Belong to the choice of a site, and not to the page that it is for. */
const ofTheChoice = new Set(['next', 'siteName', 'sitePage', 'siteFor']);

/** The address of a page to go on to, with the answers that came along beside it. */
export function withAnswers(address: string, given: Given): string {
  const url = new URL(address, here);
  for (const [name, value] of Object.entries(given)) {
    if (ofTheChoice.has(name) || value === undefined || value === '') continue;
    for (const one of typeof value === 'string' ? [value] : value) url.searchParams.append(name, one);
  }
  return url.pathname + url.search;
}

/** The address of a form with the site that it is for; whatever else was in it stays. */
export function withFormSite(address: string, siteId: string): string {
  const url = new URL(address, here);
  url.searchParams.delete('site');
  url.searchParams.set('siteId', siteId);
  return url.pathname + url.search;
}

/** The same address asked of one site or, with undefined, of all; from the first page on. */
export function withSite(address: string, siteId: string | undefined): string {
  const url = new URL(address, here);
  // What one site can use is not what another can.
  for (const name of ['site', 'page', 'after', 'before', 'equipment', 'methods'])
    url.searchParams.delete(name);
  if (siteId !== undefined) url.searchParams.set('site', siteId);
  return url.pathname + url.search;
}
