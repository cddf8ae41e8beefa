import { getLocale, getTranslations } from 'next-intl/server';
import { type ReactNode, Suspense } from 'react';
import type { FittedAnswer } from '@/lib/analysis/fitted/fitted-answer';
import { formatInstant } from '../format/instant-text';

type Props<Answer> = {
  readonly answer: FittedAnswer<Answer>;
  readonly timeZone: string;
  readonly children: (answer: Answer) => ReactNode;
};

/**
 * An answer that a model had to be fitted for: at once when it is known, with its date when records have changed since, and
 * otherwise as soon as it is there, while the rest of the page is already read.
 */
export async function FittedBlock<Answer>({ answer, timeZone, children }: Props<Answer>) {
  const t = await getTranslations('insight.fit');
  const locale = await getLocale();
  if (answer.kind === 'first') {
    return (
      <Suspense
        fallback={
          <div role="status">
            <p>{t('working')}</p>
            <noscript>
              <p>{t('noScript')}</p>
            </noscript>
          </div>
        }
      >
        <WhenFitted next={answer.next}>{children}</WhenFitted>
      </Suspense>
    );
  }
  const when = formatInstant(new Date(answer.stored.fittedAt), timeZone, locale);
  return (
    <>
      {children(answer.stored.result)}
      <p className="quiet">{answer.kind === 'current' ? t('fittedAt', { when }) : t('earlier', { when })}</p>
    </>
  );
}

async function WhenFitted<Answer>({
  next,
  children,
}: {
  readonly next: Promise<{ readonly result: Answer }>;
  readonly children: (answer: Answer) => ReactNode;
}) {
  const { result } = await next;
  return children(result);
}
