import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { Link } from './link';

type Props = { readonly newer?: Route | undefined; readonly older?: Route | undefined };

/** Steps through a long list by address. */
export async function Pager({ newer, older }: Props) {
  if (newer === undefined && older === undefined) return null;
  const t = await getTranslations('common');
  return (
    <p className="chips no-print">
      {newer === undefined ? null : (
        <Link className="button button-plain" href={newer} rel="prev">
          {t('newer')}
        </Link>
      )}
      {older === undefined ? null : (
        <Link className="button button-plain" href={older} rel="next">
          {t('older')}
        </Link>
      )}
    </p>
  );
}
