import { getTranslations } from 'next-intl/server';
import { Heading } from './heading';
import { Link } from './link';

/**
 * "There is nothing to see here", for a record that is not there or not yours. Return it from the page instead of
 * throwing `notFound()`: a thrown one has an empty body where scripts do not run.
 */
export async function NotThere() {
  const t = await getTranslations('common.notFound');
  return (
    <>
      <Heading text={t('heading')} />
      <p>{t('text')}</p>
      <p>
        <Link href="/">{t('home')}</Link>
      </p>
    </>
  );
}
