'use client';

import './globals.css';
import { Failure } from '@/lib/ui/page/failure';

export default function GlobalError({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  const language = typeof navigator !== 'undefined' && navigator.language.startsWith('es') ? 'es' : 'en';
  return (
    <html lang={language}>
      <body>
        <Failure error={error} retry={reset} language={language} />
      </body>
    </html>
  );
}
