'use client';

import type { Route } from 'next';
import { usePathname } from 'next/navigation';
import { Link } from './link';

export type NavItem = { readonly href: Route; readonly label: string };

type Props = {
  readonly items: readonly NavItem[];
  readonly label: string;
  /** Opens the pages that have no place in the row. */
  readonly moreLabel: string;
  /** The person's own page: in the list on a phone; a desk has it at the end of the header. */
  readonly own?: NavItem;
};

const onEveryScreen = 3;
const onWideScreens = 6;

/**
 * The pages of a role; the one that is open, or holds the open one, is marked. A phone shows the first three and a
 * desk the first six; the rest stands behind one more press, which works without script.
 */
export function NavLinks({ items, label, moreLabel, own }: Props) {
  const path = usePathname();
  const current = (href: string) =>
    path === href ? 'page' : path.startsWith(`${href}/`) ? 'true' : undefined;
  const link = (item: NavItem) => (
    // Fetching pages ahead would take the signal away from the page that is being opened.
    <Link href={item.href} aria-current={current(item.href)}>
      {item.label}
    </Link>
  );
  const folded = items.slice(onEveryScreen);
  const needed = folded.length > onWideScreens - onEveryScreen ? '' : ' narrow-only';
  const place = folded.findIndex((item) => current(item.href) !== undefined);
  // On a desk the row itself shows the first of what a phone folds.
  const inside = place < 0 ? undefined : place < onWideScreens - onEveryScreen ? 'narrow' : 'yes';
  const nothingFolded = folded.length === 0 && own === undefined;
  return (
    <nav className="page-nav" aria-label={label}>
      <ul>
        {items.slice(0, onWideScreens).map((item, at) => (
          <li key={item.href} className={at < onEveryScreen ? undefined : 'wide-only'}>
            {link(item)}
          </li>
        ))}
      </ul>
      {nothingFolded ? null : (
        // A new key folds the list again once a page is chosen.
        <details key={path} className={`nav-more${needed}`}>
          <summary data-inside={inside}>{moreLabel}</summary>
          <ul>
            {folded.map((item, at) => (
              <li key={item.href} className={at < onWideScreens - onEveryScreen ? 'narrow-only' : undefined}>
                {link(item)}
              </li>
            ))}
            {own === undefined ? null : <li className="narrow-only">{link(own)}</li>}
          </ul>
        </details>
      )}
    </nav>
  );
}
