'use client';

import { Failure } from '@/lib/ui/page/failure';

export default function PageError({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  const language = typeof document === 'undefined' ? 'en' : document.documentElement.lang;
  return <Failure error={error} retry={reset} language={language} />;
}
