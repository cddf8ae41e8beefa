import NextLink, { type LinkProps } from 'next/link';

/**
 * A link to a page of the product. Nothing is fetched before it is pressed: every page is made anew for its reader, so that
 * what came ahead would be thrown away, and a list of batches would ask for each of them over a bad signal.
 */
export function Link<RouteType>(props: LinkProps<RouteType>) {
  return <NextLink prefetch={false} {...props} />;
}
