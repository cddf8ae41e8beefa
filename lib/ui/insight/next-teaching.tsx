import type { Route } from 'next';
import type { NextChoice, NextPart } from '@/lib/analysis/next-question/next-answer';
import type { MassUnit } from '@/lib/database/generated/enums';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';
import { NextBegin } from './next-begin';
import { methodList } from './next-names';
import { teachingSentences } from './next-sentences';
import { nextStarts } from './next-starts';

type Props = {
  readonly choice: NextChoice;
  readonly part: NextPart;
  readonly site: string;
  readonly massUnit: MassUnit;
  /** Only coordinators plan trials. */
  readonly planning: boolean;
  readonly words: InsightWords;
};

/** Which choice would teach most, with the links that begin it. */
export function NextTeaching({ choice, part, site, massUnit, planning, words }: Props) {
  const { t } = words;
  const { teaching, outlooks } = choice;
  const { teaches } = nextStarts(choice);
  const unknown = outlooks.filter(
    ({ loss, yield: given }) => loss.kind === 'cannot' && given.kind === 'cannot',
  );
  return (
    <>
      <h2>{t('next.teachHeading')}</h2>
      {teachingSentences({ choice, site, unit: massUnit, words }).map((text) => (
        <p key={text}>{text}</p>
      ))}
      {unknown.length === 0 ? null : (
        <p>
          {t('next.unknown', {
            methods: methodList(
              unknown.map(({ methodId }) => methodId),
              words,
            ),
          })}
        </p>
      )}
      {teaching.kind === 'none' && teaching.reason === 'one-method' ? (
        <p className="no-print">
          <Link href={`/sites/${part.siteId}/methods` as Route}>{t('next.saying', { site })}</Link>
        </p>
      ) : null}
      {teaching.kind === 'lessons' ? (
        <>
          {teaches === undefined ? null : (
            <NextBegin outlook={teaches} choice={choice} part={part} advised={false} words={words} />
          )}
          {planning ? (
            <p className="chips no-print">
              <Link
                href={trialAddress(choice, part, teaching.pair, words) as Route}
                className="button button-plain"
              >
                {t('next.planTrial', pairNames(teaching.pair, words))}
              </Link>
            </p>
          ) : null}
          <p className="quiet">{t('next.teachNote')}</p>
        </>
      ) : null}
    </>
  );
}

function trialAddress(
  { speciesId }: NextChoice,
  { siteId, container, usualUnits }: NextPart,
  pair: readonly [string, string],
  words: InsightWords,
): string {
  const { t, names } = words;
  const [first, second] = pair;
  return `/trials/new?${new URLSearchParams({
    title: t('next.trialTitle', { first: names.methodName(first), second: names.methodName(second) }),
    question: t('next.trialQuestion', pairNames(pair, words)),
    speciesId,
    containerKind: container,
    unitsPerRun: String(usualUnits),
    siteIds: siteId,
    'arms.0.label': names.methodName(first),
    'arms.0.methodId': first,
    'arms.1.label': names.methodName(second),
    'arms.1.methodId': second,
  })}`;
}

function pairNames([first, second]: readonly [string, string], { inSentence }: InsightWords) {
  return { first: inSentence(first), second: inSentence(second) };
}
