import { getTranslations } from 'next-intl/server';
import { readerLocale } from '@/lib/base/reader-locale';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { OfflineShell } from '@/lib/ui/offline/offline-shell';
import { offlineWordsOf } from '@/lib/ui/offline/offline-words';

/** What a phone shows with no signal. Open to anybody and the same for everybody: it holds nothing of anybody. */
export default async function OfflinePage() {
  const t = await getTranslations('common');
  const words = {
    en: offlineWordsOf(loadMessages('en'), readerLocale({ language: 'en', region: 'en-US' })),
    es: offlineWordsOf(loadMessages('es'), readerLocale({ language: 'es', region: 'es-US' })),
  };
  return (
    <main id="main" className="page-main" tabIndex={-1}>
      <OfflineShell words={words} product={t('product')} />
      <noscript>
        <p>{loadMessages('en').offline.shell.needsSignal}</p>
        <p lang="es">{loadMessages('es').offline.shell.needsSignal}</p>
      </noscript>
    </main>
  );
}
