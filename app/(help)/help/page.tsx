import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { currentSigned } from '@/lib/access/current';
import { guideSteps } from '@/lib/ui/help/guide-steps';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { PageShell } from '@/lib/ui/page/page-shell';

/** One page per role: what to do first, and what the figures mean. */
export default async function HelpPage() {
  const signed = await currentSigned();
  const role = signed?.actor?.role ?? 'visitor';
  const t = await getTranslations('help');
  const common = await getTranslations('common');
  return (
    <PageShell name={signed?.actor?.networkName ?? common('product')}>
      <Heading text={t(`heading.${role}`)} />
      <ol>
        {guideSteps[role].map((step) => (
          <li key={step.words}>
            {t(`steps.${step.words}`)}
            {'href' in step ? (
              <>
                {' '}
                <Link href={step.href as Route}>{t(`links.${step.words}`)}</Link>
              </>
            ) : null}
          </li>
        ))}
      </ol>
      <h2>{t('wordsHeading')}</h2>
      <p>{t('words.be')}</p>
      <p>{t('words.rate')}</p>
      <p>{t('words.interval')}</p>
      <h2>{t('careHeading')}</h2>
      <p>{t('care')}</p>
    </PageShell>
  );
}
