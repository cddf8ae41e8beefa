import { askLosses } from '@/lib/analysis/loss-question/losses-question';
import { LossesAnswerView } from '@/lib/ui/insight/losses-answer-view';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { loadQuestion } from '../load-question';

export default async function LossesPage({ searchParams }: PageProps<'/questions/losses'>) {
  const { now: _now, ...loaded } = await loadQuestion(searchParams, askLosses);
  return (
    <QuestionFrame question="losses" {...loaded} levels>
      {(answer, words) => <LossesAnswerView answer={answer} words={words} />}
    </QuestionFrame>
  );
}
