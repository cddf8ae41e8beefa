import type { Route } from 'next';
import { readAs } from '@/lib/access/scoped-db';
import { askLots, readLotCodes } from '@/lib/analysis/lot-question/lots-question';
import { listToldLots } from '@/lib/records/lot-notice/list-told-lots.query';
import { LotsAnswerView } from '@/lib/ui/insight/lots-answer-view';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { Link } from '@/lib/ui/page/link';
import { loadQuestion } from '../load-question';

export default async function LotsQuestionPage({ searchParams }: PageProps<'/questions/lots'>) {
  const address = await searchParams;
  const { now: _now, ...loaded } = await loadQuestion(searchParams, askLots);
  const codes = await readAs(loaded.actor, readLotCodes);
  const told = await readAs(loaded.actor, listToldLots);
  return (
    <QuestionFrame
      question="lots"
      {...loaded}
      below={({ t }) => (
        <p className="no-print">
          <Link href={'/questions/origins' as Route}>{t('lots.toOrigins')}</Link>
        </p>
      )}
    >
      {(answer, words) => (
        <LotsAnswerView answer={answer} codes={codes} told={told} words={words} address={address} />
      )}
    </QuestionFrame>
  );
}
