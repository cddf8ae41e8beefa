import type { Route } from 'next';
import type { NoneOut, TellingExample } from '@/lib/analysis/loss-question/losses-answer';
import { formatInterval } from '../format/interval-text';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';

/**
 * The site, lot or run that stands out of each source, each with its link and what an ordinary one would have lost; of the
 * other sources that no single one does.
 */
export function TellingExamplesView({
  examples,
  noneOut,
  words,
}: {
  readonly examples: readonly TellingExample[];
  readonly noneOut: readonly NoneOut[];
  readonly words: InsightWords;
}) {
  const { t, number, locale, units } = words;
  if (examples.length + noneOut.length === 0) return <p>{t('losses.noExamples')}</p>;
  return (
    <>
      <ul>
        {examples.map((example) => (
          <li key={`${example.source} ${example.levelId}`}>
            <Link href={addressOf(example) as Route}>{nameOf(example, words)}</Link>
            {': '}
            {t('losses.example', {
              found: number(example.found),
              of: number(example.units),
              units,
              batches: example.batches,
              expected: number(example.expected),
              source: t(`losses.ordinary.${example.source}`),
            })}{' '}
            <span className="quiet">
              {t('losses.exampleOdds', {
                odds: number(example.odds.estimate, 1),
                interval: formatInterval(example.odds.low, example.odds.high, locale),
              })}
            </span>
          </li>
        ))}
        {noneOut.map(({ source, levels }) => (
          <li key={source}>
            {t(`losses.row.${source}`)}: {t('losses.noneOut', { levels: number(levels) })}
          </li>
        ))}
      </ul>
      {examples.length === 0 ? null : (
        <p className="quiet">
          {t('losses.examplesNote')} <Link href={'/questions/lots' as Route}>{t('index.lots')}</Link>
        </p>
      )}
    </>
  );
}

function nameOf({ source, code, siteId, methodKey }: TellingExample, { t, names }: InsightWords): string {
  const name = `${t(`losses.source.${source}`)} `;
  const what = name.charAt(0).toUpperCase() + name.slice(1).trimEnd();
  if (source === 'site') return names.siteName(siteId);
  if (source === 'site x method') return `${names.methodName(methodKey)}, ${names.siteName(siteId)}`;
  return `${what} ${code ?? '–'}${source === 'run' ? `, ${names.siteName(siteId)}` : ''}`;
}

function addressOf({ source, levelId, siteId, methodKey }: TellingExample): string {
  switch (source) {
    case 'site':
      return `/questions/sites/${siteId}`;
    case 'site x method':
      return `/comparison/rows?site=${siteId}&method=${methodKey}`;
    case 'spawn lot':
      return `/spawn-lots/${levelId}`;
    case 'material lot':
      return `/substrate-lots/${levelId}`;
    case 'run':
      return `/treatments/${levelId}`;
  }
}
