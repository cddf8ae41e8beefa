import { askTreatments } from '@/lib/analysis/treatment-question/treatments-question';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { TreatmentsAnswerView } from '@/lib/ui/insight/treatments-answer-view';
import { loadQuestion } from '../load-question';

export default async function TreatmentsQuestionPage({ searchParams }: PageProps<'/questions/treatments'>) {
  const address = await searchParams;
  const { now: _now, ...loaded } = await loadQuestion(searchParams, askTreatments);
  return (
    <QuestionFrame question="treatments" {...loaded}>
      {(answer, words) => (
        <TreatmentsAnswerView
          answer={answer}
          words={words}
          temperatureUnit={loaded.actor.temperatureUnit}
          address={address}
        />
      )}
    </QuestionFrame>
  );
}
