import type { TreatmentsAnswer } from '@/lib/analysis/treatment-question/treatments-answer';
import type { TemperatureUnit } from '../format/temperature-text';
import type { InsightWords } from './insight-words';
import { TreatmentCourses } from './treatment-courses';
import { TreatmentDrift } from './treatment-drift';
import { TreatmentLosses } from './treatment-losses';
import { treatmentSentences } from './treatment-sentences';

type Props = {
  readonly answer: TreatmentsAnswer;
  readonly words: InsightWords;
  readonly temperatureUnit: TemperatureUnit;
};

/** Answer first: how many runs fell short, where, and what it cost; then losses, each site's runs, and their courses. */
export function TreatmentsAnswerView({ answer, words, temperatureUnit }: Props) {
  const { t } = words;
  const [first, ...rest] = treatmentSentences(answer, words);
  return (
    <>
      <p className="answer-sentence">{first}</p>
      {rest.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {answer.unknownRuns === 0 ? null : <p>{t('treatments.unknown', { count: answer.unknownRuns })}</p>}
      <p>{t(answer.outsideRuns === 0 ? 'treatments.nextNone' : 'treatments.next')}</p>
      <TreatmentLosses answer={answer} words={words} temperatureUnit={temperatureUnit} />
      <TreatmentDrift sites={answer.sites} words={words} />
      <TreatmentCourses answer={answer} words={words} temperatureUnit={temperatureUnit} />
    </>
  );
}
