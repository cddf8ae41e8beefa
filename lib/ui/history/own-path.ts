/** A path of this site to go back to; anything else, such as another site's address, leads to the first page. */
export function ownPath(path: unknown): string {
  return typeof path === 'string' && /^\/[a-z0-9][a-z0-9/?=&-]*$/i.test(path) ? path : '/';
}
