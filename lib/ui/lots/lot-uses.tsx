import type { Route } from 'next';
import Link from 'next/link';
import { getTranslations } from 'next-intl/server';

type Use = { readonly batchId: string; readonly code: string; readonly siteName: string };

/** The batches, of those the reader may see, that a lot or a treatment went into. */
export async function LotUses({ batches }: { batches: readonly Use[] }) {
  const t = await getTranslations('lots');
  return (
    <>
      <h2>{t('usedIn')}</h2>
      {batches.length === 0 ? (
        <p>{t('notUsed')}</p>
      ) : (
        <ul>
          {batches.map((batch) => (
            <li key={batch.batchId}>
              <Link href={`/batches/${batch.batchId}` as Route}>{batch.code}</Link>, {batch.siteName}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
