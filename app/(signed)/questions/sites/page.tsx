import { askSites } from '@/lib/analysis/site-question/sites-question';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { SitesAnswerView } from '@/lib/ui/insight/sites-answer-view';
import { loadQuestion } from '../load-question';

export default async function SitesQuestionPage({ searchParams }: PageProps<'/questions/sites'>) {
  const address = await searchParams;
  const { now: _now, ...loaded } = await loadQuestion(searchParams, askSites);
  return (
    <QuestionFrame question="sites" {...loaded}>
      {(answer, words) => <SitesAnswerView answer={answer} words={words} address={address} />}
    </QuestionFrame>
  );
}
