import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listTokens } from '@/lib/records/token/list-tokens.query';
import { TokenTable } from '@/lib/ui/api/token-table';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Notice } from '@/lib/ui/page/notice';

export default async function TokensPage({ searchParams }: PageProps<'/account/tokens'>) {
  const actor = await requireActor('coordinator', 'member');
  const { saved } = await searchParams;
  const tokens = await readAs(actor, (context) => listTokens(context, new Date()));
  const t = await getTranslations('api.tokens');
  const own = tokens.filter((token) => token.own);
  const others = tokens.filter((token) => !token.own);
  const timeZone = actor.networkTimeZone;
  return (
    <>
      {saved === 'withdrawn' ? <Notice>{t('withdrawn')}</Notice> : null}
      <Heading text={t('heading')} />
      <p>{t('intro', { network: actor.networkName })}</p>
      <p>
        <ButtonLink href={'/account/tokens/new' as Route}>{t('make')}</ButtonLink>
      </p>
      <p>
        <Link href={'/help/api' as Route}>{t('howTo')}</Link>
      </p>
      {own.length === 0 ? (
        <p>{t('noneYet')}</p>
      ) : (
        <TokenTable caption={t('own')} tokens={own} timeZone={timeZone} named={false} />
      )}
      {actor.role === 'coordinator' ? (
        <>
          <h2>{t('others')}</h2>
          <p>{t(others.length === 0 ? 'noOthers' : 'othersNote')}</p>
          {others.length === 0 ? null : (
            <TokenTable caption={t('others')} tokens={others} timeZone={timeZone} named />
          )}
        </>
      ) : null}
    </>
  );
}
