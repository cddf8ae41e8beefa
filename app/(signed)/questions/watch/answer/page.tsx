import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { fittedSignals } from '@/lib/analysis/watch-question/fitted-signals';
import { watch } from '@/lib/analysis/watch-question/watch-question';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { signalAnswerFields } from '@/lib/ui/watch/signal-answer-fields';
import { signalSentence } from '@/lib/ui/watch/signal-sentence';
import { answerSignalAction } from '../actions';
import { loadSignals } from '../load-signals';

export default async function AnswerSignalPage({ searchParams }: PageProps<'/questions/watch/answer'>) {
  const { signal: key } = await searchParams;
  const actor = await requireActor('coordinator');
  const watched = await watch(actor, new Date(), 365);
  if (!watched || typeof key !== 'string') return <NotThere />;
  const { fitted, plain } = watched;
  // A line of the models can only have been read after they were fitted.
  const all = [...plain, ...(fitted.kind === 'first' ? [] : fittedSignals(fitted.stored.result))];
  const asked = all.filter((signal) => signal.key === key);
  const { signals, answers, words } = await loadSignals(actor, watched, asked);
  const [signal] = signals;
  if (signal === undefined) return <NotThere />;
  const t = await getTranslations('watch.watch');
  const given = answers.get(key);
  return (
    <RecordForm
      action={answerSignalAction}
      heading={t('answerHeading')}
      fields={await signalAnswerFields(signalSentence(signal, words), given !== undefined)}
      values={{ signalKey: key, answer: given?.answer ?? 'explained', words: given?.words ?? '' }}
      submitLabel={t('save')}
      words={await loadFormWords()}
      after={<Link href={'/questions/watch' as Route}>{t('heading')}</Link>}
    />
  );
}
