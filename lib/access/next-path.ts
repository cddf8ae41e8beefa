import type { Route } from 'next';

/** Header in which the proxy tells a page its own address; whatever a browser sends under that name is replaced. */
export const askedPathHeader = 'x-asked-path';

const here = 'http://here.invalid';

/**
 * A path of this site to go on to after signing in, such as where the code of a label leads; undefined for anything
 * else, above all the address of another site.
 */
export function nextPath(asked: unknown): string | undefined {
  if (typeof asked !== 'string' || asked.length > 4000 || !/^\/[^/\\]/.test(asked)) return undefined;
  if (/[\\\p{Cc}]/u.test(asked) || !URL.canParse(asked, here)) return undefined;
  const { origin, pathname, search } = new URL(asked, here);
  if (origin !== here || pathname.startsWith('//') || /^\/(sign-in|networks|api)(\/|$)/.test(pathname))
    return undefined;
  return pathname + search;
}

/** The address of a page on the way to another, which remembers that other. */
export function onTheWay(page: '/sign-in' | '/networks', asked: unknown): Route {
  const next = nextPath(asked);
  return (next === undefined ? page : `${page}?next=${encodeURIComponent(next)}`) as Route;
}
