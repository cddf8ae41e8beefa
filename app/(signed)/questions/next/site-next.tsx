import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { choiceAsked } from '@/lib/analysis/next-question/choice-asked';
import type { NextAsked } from '@/lib/analysis/next-question/next-choice.input';
import { withEquipment } from '@/lib/analysis/next-question/with-equipment';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { nextChips } from '@/lib/ui/insight/next-chips';
import { nextFields, nextValues } from '@/lib/ui/insight/next-fields';
import { NextPartView } from '@/lib/ui/insight/next-part-view';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadSiteNext } from './load-site-next';

type Props = { readonly actor: Actor; readonly asked: NextAsked };

/** What one site could do next, by choice: for a coordinator any site, for a member an own one. */
export async function SiteNext({ actor, asked: given }: Props) {
  const t = await getTranslations('insight');
  const siteId = given.site ?? actor.siteIds[0];
  if (siteId === undefined) return <EmptyState text={t('next.noSite')} />;
  const coordinates = actor.role === 'coordinator';
  if (!coordinates && !actor.siteIds.includes(siteId)) return <NotThere />;
  const loaded = await loadSiteNext(actor, given, siteId);
  if (!loaded) return <NotThere />;
  const { options, choices, asked, known } = loaded;
  const container = typeof known === 'string' ? 'bag' : known.container;
  const words = await insightWords(actor, { choices, filter: { container } });
  const open = choices.sites.filter(({ id, left }) => !left && (coordinates || actor.siteIds.includes(id)));
  const fields = await nextFields(
    options,
    {
      options: open.map(({ id, name }) => ({ value: id, label: name })),
      none: t(coordinates ? 'next.form.allSites' : 'next.form.ownSite'),
    },
    words,
  );
  const equipment = asked.methods ? { usable: asked.methods, unsaid: false } : options.equipment;
  return (
    <>
      <Heading text={t('next.heading', { site: words.names.siteName(siteId) })} />
      <FilterForm
        action={'/questions/next' as Route}
        summary={t('next.form.open')}
        fields={fields}
        values={nextValues(asked, options)}
        chips={await nextChips(asked, words)}
      />
      {typeof known === 'string' ? (
        <EmptyState text={t(known === 'nothing' ? 'fit.empty' : 'next.noReader')} />
      ) : (
        <FittedBlock answer={known.answer} timeZone={actor.networkTimeZone}>
          {(fitted) => {
            const part = withEquipment(fitted, equipment);
            return (
              <NextPartView
                part={part}
                choice={choiceAsked(part, asked)}
                asked={asked}
                short={known.short}
                options={options}
                reader={actor}
                words={words}
              />
            );
          }}
        </FittedBlock>
      )}
      {coordinates ? (
        <p className="no-print">
          <Link href={'/questions/next' as Route}>{t('next.allLink')}</Link>
        </p>
      ) : null}
    </>
  );
}
