import type { TreatmentsAnswer } from '@/lib/analysis/treatment-question/treatments-answer';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import type { TemperatureUnit } from '../format/temperature-text';
import type { InsightWords } from './insight-words';
import { ListPager } from './list-pager';
import { pageOfList } from './page-of-list';
import { TreatmentCourses } from './treatment-courses';
import { TreatmentDrift } from './treatment-drift';
import { TreatmentLosses } from './treatment-losses';
import { treatmentSentences } from './treatment-sentences';

type Props = {
  readonly answer: TreatmentsAnswer;
  readonly words: InsightWords;
  readonly temperatureUnit: TemperatureUnit;
  /** The address of the page, which names the page of a long list. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
};

/** Answer first: how many runs did not hold, where, and what it cost; then losses, each site's runs, and their courses. */
export function TreatmentsAnswerView({ answer, words, temperatureUnit, address }: Props) {
  const { t, names, language } = words;
  const ids = [...new Set(answer.sites.map(({ siteId }) => siteId))].sort((a, b) =>
    names.siteName(a).localeCompare(names.siteName(b), language),
  );
  const listed = pageOfList(ids, address.page, mostSitesListed);
  const shown = { ...answer, sites: answer.sites.filter(({ siteId }) => listed.rows.includes(siteId)) };
  const [first, ...rest] = treatmentSentences(answer, words);
  return (
    <>
      <p className="answer-sentence">{first}</p>
      {rest.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {answer.unknownRuns === 0 ? null : <p>{t('treatments.unknown', { count: answer.unknownRuns })}</p>}
      {answer.otherRuns === 0 ? null : <p>{t('treatments.others', { count: answer.otherRuns })}</p>}
      <p>{t(nextStep(answer))}</p>
      <TreatmentLosses answer={answer} words={words} temperatureUnit={temperatureUnit} />
      <TreatmentDrift sites={shown.sites} words={words} />
      <TreatmentCourses answer={shown} words={words} temperatureUnit={temperatureUnit} />
      <ListPager of="sites" path="/questions/treatments" listed={listed} address={address} words={words} />
    </>
  );
}

function nextStep({ outsideRuns, longRuns }: TreatmentsAnswer) {
  if (outsideRuns > 0) return 'treatments.next';
  return longRuns > 0 ? 'treatments.nextLonger' : 'treatments.nextNone';
}
