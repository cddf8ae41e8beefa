import type { Route } from 'next';
import type { ReactNode } from 'react';
import { Link } from './link';

type Props = { readonly href: Route; readonly plain?: boolean; readonly children: ReactNode };

/** A link that is the next step of the page; at most one that is not plain. */
export function ButtonLink({ href, plain = false, children }: Props) {
  return (
    <Link href={href} className={plain ? 'button button-plain' : 'button button-action'}>
      {children}
    </Link>
  );
}
