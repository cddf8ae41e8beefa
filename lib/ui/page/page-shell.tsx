import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { Link } from './link';
import { type NavItem, NavLinks } from './nav-links';

type Props = {
  /** Name of the network, or of the product before sign-in. */
  readonly name: string;
  readonly nav?: readonly NavItem[];
  /** The person's own page, by name. */
  readonly own?: NavItem;
  /** What stands in the header beside the name of the network, such as entries not yet sent. */
  readonly account?: ReactNode;
  readonly children: ReactNode;
};

/** Header, main and footer of every page; the help link is always the first thing of the footer. */
export async function PageShell({ name, nav = [], own, account, children }: Props) {
  const t = await getTranslations('common');
  return (
    <>
      <a href="#main" className="skip-link">
        {t('skipToMain')}
      </a>
      <header className="page-header">
        <p className="page-network">
          <Link href="/">{name}</Link>
        </p>
        {nav.length === 0 ? null : (
          <NavLinks items={nav} label={t('navigation')} moreLabel={t('more')} {...(own ? { own } : {})} />
        )}
        {account === undefined ? null : <div className="page-account">{account}</div>}
        {own === undefined ? null : (
          <div className="page-account wide-only">
            <Link href={own.href}>{own.label}</Link>
          </div>
        )}
      </header>
      <main id="main" className="page-main" tabIndex={-1}>
        {children}
      </main>
      <footer className="page-footer">
        <Link href={'/help' as Route}>{t('help')}</Link>
        <p>{name === t('product') ? t('productLine') : t('footerLine', { network: name })}</p>
      </footer>
    </>
  );
}
