import { readAs } from '@/lib/access/scoped-db';
import { askMethods } from '@/lib/analysis/method-question/methods-question';
import { readRawMethods } from '@/lib/analysis/method-question/read-raw-methods';
import { MethodsAnswerView } from '@/lib/ui/insight/methods-answer-view';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { RawMethods } from '@/lib/ui/insight/raw-methods';
import { loadQuestion } from '../load-question';

export default async function MethodsPage({ searchParams }: PageProps<'/questions/methods'>) {
  const { now, ...loaded } = await loadQuestion(searchParams, askMethods);
  const { actor, known } = loaded;
  const raw =
    known?.answer.kind === 'first'
      ? await readAs(actor, (context) => readRawMethods(context, known.scope, now))
      : [];
  return (
    <QuestionFrame
      question="methods"
      {...loaded}
      levels
      below={(words) => (raw.length === 0 ? null : <RawMethods rows={raw} words={words} />)}
    >
      {(answer, words) => <MethodsAnswerView answer={answer} words={words} />}
    </QuestionFrame>
  );
}
