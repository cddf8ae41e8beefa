import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Signal } from '@/lib/analysis/watch-question/signal';
import type { SignalAnswerView } from '@/lib/records/signal/list-signal-answers.query';
import { formatInstant } from '../format/instant-text';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import { signalPath } from './signal-path';
import { type SignalWords, signalSentence } from './signal-sentence';
import { sinceText } from './since-text';

type Props = {
  readonly signal: Signal;
  readonly answer: SignalAnswerView | undefined;
  readonly words: SignalWords;
  readonly timeZone: string;
  readonly seen: (data: FormData) => Promise<void>;
};

/** One signal: since when, what and why, and what can be said to it, or what was said. */
export async function SignalLine({ signal, answer, words, timeZone, seen }: Props) {
  const t = await getTranslations('watch.watch');
  const told = await getTranslations('notices');
  const { locale } = words;
  const sentence = signalSentence(signal, words);
  const answerPath = `/questions/watch/answer?signal=${encodeURIComponent(signal.key)}` as Route;
  const look = (
    <>
      <span className="quiet">{t('since', { when: sinceText(signal, locale) })}</span>
      <Link href={signalPath(signal)} aria-label={`${t('open')}: ${sentence}`}>
        {t('open')}
      </Link>
      {signal.kind === 'lot' ? (
        <Link
          href={`/lot-notices/new/spawn-lot/${signal.lotId}?called=out` as Route}
          aria-label={told('new.linkOf', { lot: words.codes.get(signal.lotId) ?? '–' })}
        >
          {told('new.link')}
        </Link>
      ) : null}
    </>
  );
  if (answer === undefined)
    return (
      <li className="signal">
        <p>
          <KeptCodes text={sentence} />
        </p>
        <form action={seen} className="record-links">
          {look}
          <Link href={answerPath} aria-label={`${t('explain')}: ${sentence}`}>
            {t('explain')}
          </Link>
          <input type="hidden" name="signalKey" value={signal.key} />
          <button type="submit" className="button button-plain" aria-label={t('seenOf', { what: sentence })}>
            {t('seen')}
          </button>
        </form>
      </li>
    );
  const when = formatInstant(new Date(answer.at), timeZone, locale);
  const said = { who: answer.by ?? t('somebody'), when, words: answer.words ?? '' };
  return (
    <li className="signal">
      <p>
        <KeptCodes text={sentence} />
      </p>
      <p>{t(`answer.${answer.answer}`, said)}</p>
      <p className="record-links">
        {look}
        <Link href={answerPath}>{t('change')}</Link>
        <Link href={`/history/${answer.recordId}` as Route}>{t('history')}</Link>
      </p>
    </li>
  );
}
