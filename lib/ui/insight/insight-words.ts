import { getLocale, getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { QuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { placeNames } from '../comparison/place-names';
import { loadFigureViews } from '../figure/load-figure-views';
import { formatNumber } from '../format/number-text';

/** What the pages of questions are written with: words, names of methods and sites, and figures in the reader's writing. */
export async function insightWords(
  actor: Pick<Actor, 'language' | 'networkTimeZone' | 'massUnit'>,
  {
    choices,
    filter,
  }: Pick<QuestionScope, 'choices'> & { readonly filter: { readonly container: ContainerKind } },
) {
  const t = await getTranslations('insight');
  const locale = await getLocale();
  const names = await placeNames(choices, actor.language);
  return {
    t,
    locale,
    names,
    /** A method's name as inside a sentence: "hot-water bath", but "EM soak". */
    inSentence: (method: string) => {
      const name = names.methodName(method);
      const [first = '', second = ''] = name;
      return second === second.toLowerCase() ? first.toLowerCase() + name.slice(1) : name;
    },
    view: await loadFigureViews(actor.networkTimeZone, actor.massUnit),
    /** A site's short code, as charts name it. */
    codeOf: (siteId: string) => choices.sites.find(({ id }) => id === siteId)?.code ?? '–',
    /** "bags": what is counted. */
    units: t(`unit.${filter.container}`),
    number: (value: number, digits = 0) => formatNumber(value, locale, digits),
    language: actor.language,
  };
}

export type InsightWords = Awaited<ReturnType<typeof insightWords>>;
