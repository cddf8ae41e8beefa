import { getTranslations } from 'next-intl/server';
import type { Signal } from '@/lib/analysis/watch-question/signal';
import type { SignalAnswerView } from '@/lib/records/signal/list-signal-answers.query';
import { formatDate } from '../format/date-text';
import { SignalLine } from './signal-line';
import type { SignalWords } from './signal-sentence';

export type ListedSignals = {
  /** The newest first. */
  readonly signals: readonly Signal[];
  readonly answers: ReadonlyMap<string, SignalAnswerView>;
  readonly words: SignalWords;
};

type Props = ListedSignals & {
  readonly since: string;
  readonly timeZone: string;
  readonly seen: (data: FormData) => Promise<void>;
};

/** More than anybody answers in a day; as these are answered the others come up. */
const mostListed = 100;

/** What stepped out of line and is not answered, newest first; what was answered is folded, answered last first. */
export async function WatchList({ signals, answers, words, since, timeZone, seen }: Props) {
  const t = await getTranslations('watch.watch');
  const open = signals.filter(({ key }) => !answers.has(key));
  // An answer just given, perhaps by mistake, must not be among those that are not listed.
  const answeredAt = ({ key }: Signal) => answers.get(key)?.at ?? '';
  const answered = signals
    .filter(({ key }) => answers.has(key))
    .sort((a, b) => answeredAt(b).localeCompare(answeredAt(a)));
  const lines = (some: readonly Signal[]) => (
    <ul className="plain-list mb-4">
      {some.slice(0, mostListed).map((signal) => (
        <SignalLine
          key={signal.key}
          signal={signal}
          answer={answers.get(signal.key)}
          {...{ words, timeZone, seen }}
        />
      ))}
    </ul>
  );
  const more = (some: readonly Signal[], key: 'newestOpen' | 'answeredLast') =>
    some.length <= mostListed ? null : <p>{t(key, { shown: mostListed, count: some.length })}</p>;
  const when = formatDate(since, words.locale);
  return (
    <>
      <p className="answer-sentence">
        {open.length === 0 ? t('none', { since: when }) : t('some', { count: open.length, since: when })}
      </p>
      {open.length === 0 ? null : (
        <>
          <p>{t('next')}</p>
          {more(open, 'newestOpen')}
          {lines(open)}
        </>
      )}
      {answered.length === 0 ? null : (
        <details>
          <summary>{t('answered', { count: answered.length })}</summary>
          {more(answered, 'answeredLast')}
          {lines(answered)}
        </details>
      )}
    </>
  );
}
