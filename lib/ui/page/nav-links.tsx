'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { usePathname } from 'next/navigation';

export type NavItem = { readonly href: Route; readonly label: string };

/** The pages of a role; the one that is open, or holds the open one, is marked. */
export function NavLinks({ items, label }: { items: readonly NavItem[]; label: string }) {
  const path = usePathname();
  return (
    <nav className="page-nav" aria-label={label}>
      <ul>
        {items.map((item) => (
          <li key={item.href}>
            <Link
              href={item.href}
              aria-current={
                path === item.href ? 'page' : path.startsWith(`${item.href}/`) ? 'true' : undefined
              }
            >
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
