import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { readNextPart } from '@/lib/analysis/next-question/next-question';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { NextPartView } from '@/lib/ui/insight/next-part-view';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { LinkChips } from '@/lib/ui/page/link-chips';
import { NotThere } from '@/lib/ui/page/not-there';

type Props = { readonly actor: Actor; readonly site: string | undefined; readonly mix: string | undefined };

/** For a member: the own site, as last worked out for the coordinator. */
export async function SiteNext({ actor, site, mix }: Props) {
  const t = await getTranslations('insight');
  const siteId = site ?? actor.siteIds[0];
  if (siteId === undefined) return <EmptyState text={t('next.noSite')} />;
  if (!actor.siteIds.includes(siteId)) return <NotThere />;
  const { scope, stored } = await readAs(actor, async (context) => ({
    scope: await readQuestionScope(context, parseQuestion({}), new Date()),
    stored: await readNextPart(context, siteId),
  }));
  if (!scope) {
    return (
      <>
        <Heading text={t('index.next')} />
        <EmptyState text={t('fit.empty')} />
      </>
    );
  }
  const container = stored?.result.container ?? scope.filter.container;
  const words = await insightWords(actor, { ...scope, filter: { container } });
  const own = scope.choices.sites.filter(({ id }) => actor.siteIds.includes(id));
  return (
    <>
      <Heading text={t('next.heading', { site: words.names.siteName(siteId) })} />
      {own.length < 2 ? null : (
        <LinkChips
          label={t('next.allColumns.site')}
          chosen={siteId}
          options={own.map(({ id, name }) => ({
            value: id,
            label: name,
            href: `/questions/next?site=${id}`,
          }))}
        />
      )}
      {stored === undefined ? (
        <EmptyState text={t('next.notYet')} />
      ) : (
        <>
          <NextPartView part={stored.result} mix={mix} reader={actor} words={words} />
          <p className="quiet">
            {t('fit.fittedAt', {
              when: formatInstant(new Date(stored.fittedAt), actor.networkTimeZone, words.locale),
            })}
          </p>
        </>
      )}
    </>
  );
}
