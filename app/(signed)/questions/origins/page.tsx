import type { Route } from 'next';
import { readAs } from '@/lib/access/scoped-db';
import { originQuestions } from '@/lib/analysis/lot-question/answer-origins';
import { readLotCodes } from '@/lib/analysis/lot-question/lots-question';
import { askOrigins, readMaterialCodes } from '@/lib/analysis/lot-question/origins-question';
import { OriginsAnswerView } from '@/lib/ui/insight/origins-answer-view';
import { QuestionFrame } from '@/lib/ui/insight/question-frame';
import { Link } from '@/lib/ui/page/link';
import { loadQuestion } from '../load-question';

export default async function OriginsQuestionPage({ searchParams }: PageProps<'/questions/origins'>) {
  const { now: _now, ...loaded } = await loadQuestion(searchParams, askOrigins);
  const { codes, spawn } = await readAs(loaded.actor, async (context) => ({
    codes: await readMaterialCodes(context),
    spawn: await readLotCodes(context),
  }));
  return (
    <QuestionFrame
      question="origins"
      {...loaded}
      below={({ t }) => (
        <p className="no-print">
          <Link href={'/questions/lots' as Route}>{t('origins.toLots')}</Link>
        </p>
      )}
    >
      {({ answers, badSpawnLots, apart }, words) =>
        originQuestions.map((of) => (
          <section key={of}>
            <h2>{words.t(`origins.${of}.heading`)}</h2>
            <OriginsAnswerView
              of={of}
              answer={answers[of]}
              codes={codes}
              apart={badSpawnLots.map((id) => spawn.get(id) ?? '–')}
              apartFrom={(origin) =>
                of === 'materialLots'
                  ? []
                  : (apart[of][origin] ?? []).map((id) => ({
                      id,
                      code: (of === 'spawnMakers' ? spawn : codes).get(id) ?? '–',
                    }))
              }
              words={words}
            />
          </section>
        ))
      }
    </QuestionFrame>
  );
}
