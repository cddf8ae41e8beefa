import { getTranslations } from 'next-intl/server';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

/** After a person has left: what was done, in a sentence. */
export default async function LeftPage({ searchParams }: PageProps<'/left'>) {
  const gone = (await searchParams).gone === '1';
  const t = await getTranslations('leaving.left');
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">{t(gone ? 'gone' : 'left')}</p>
      {gone ? null : (
        <p>
          <Link href="/sign-in">{t('signIn')}</Link>
        </p>
      )}
    </>
  );
}
