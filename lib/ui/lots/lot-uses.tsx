import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { Link } from '../page/link';

type Use = { readonly batchId: string; readonly code: string; readonly siteName: string };

/** More batches than these stand folded: on a phone what follows them would be out of reach. */
const shownOpen = 12;

/** The batches, of those the reader may see, that a lot or a treatment went into. */
export async function LotUses({ batches }: { batches: readonly Use[] }) {
  const t = await getTranslations('lots');
  return (
    <>
      <h2>{t('usedIn')}</h2>
      {batches.length === 0 ? (
        <p>{t('notUsed')}</p>
      ) : (
        <details open={batches.length <= shownOpen}>
          <summary>{t('usedCount', { count: batches.length })}</summary>
          <ul>
            {batches.map((batch) => (
              <li key={batch.batchId}>
                <Link href={`/batches/${batch.batchId}` as Route}>{batch.code}</Link>, {batch.siteName}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
