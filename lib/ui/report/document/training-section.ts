import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentFact, DocumentTable } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import { headsCell } from './heads-cell';
import type { IndicatorSection } from './indicator-sections';
import type { ReportTongue } from './report-tongue';

type Told = NonNullable<FunderReportContent['trainings']>;
type Row = Told['answers'][number];

function meanCell(
  mean: number | null,
  answers: number | undefined,
  { t, locale }: ReportTongue,
): DocumentCell {
  if (mean === null) return { text: t('trainings.noAnswers') };
  const text = formatNumber(mean, locale, 1);
  return answers === undefined
    ? { text, value: mean }
    : { text, value: mean, below: t('trainings.answers', { count: answers }) };
}

function changeCell(change: number | null, { t, locale }: ReportTongue): DocumentCell {
  if (change === null) return { text: t('trainings.noChange') };
  const sign = change > 0 ? '+' : change < 0 ? '−' : '';
  return { text: `${sign}${formatNumber(Math.abs(change), locale, 1)}`, value: change };
}

function cellsOf(row: Row, tongue: ReportTongue): DocumentCell[] {
  const { t } = tongue;
  const { wording, scaleMost, leastLabel, mostLabel, answers } = row;
  const ends = leastLabel !== null && mostLabel !== null ? { least: leastLabel, most: mostLabel } : undefined;
  const scale = ends
    ? t('trainings.scaleEnds', { points: scaleMost, ...ends })
    : t('trainings.scale', { points: scaleMost });
  const asked = { text: wording, below: scale };
  if (answers.kind === 'protected')
    return [asked, { text: t('protected') }, { text: t('protected') }, { text: t('protected') }];
  return [
    asked,
    meanCell(answers.meanBefore, answers.nBefore, tongue),
    meanCell(answers.meanAfter, answers.nAfter, tongue),
    changeCell(answers.change, tongue),
  ];
}

function answersTable({ answers }: Told, tongue: ReportTongue): DocumentTable {
  const { t } = tongue;
  return {
    key: 'answers',
    caption: t('trainings.caption'),
    columns: [
      { key: 'question', header: t('columns.question'), numeric: false },
      { key: 'before', header: t('columns.meanBefore'), numeric: true, unit: ucumCodes.one },
      { key: 'after', header: t('columns.meanAfter'), numeric: true, unit: ucumCodes.one },
      { key: 'change', header: t('columns.change'), numeric: true, unit: ucumCodes.one },
    ],
    rows: answers.map((row, at) => ({ key: `${at + 1}`, cells: cellsOf(row, tongue) })),
  };
}

/** Trainings, who came to them, and what they answered before and after. */
export const trainingSection: IndicatorSection = ({ trainings: told, rule }, tongue) => {
  const { t, locale } = tongue;
  if (!told || told.trainings === 0) return { paragraphs: [t('trainings.none')] };
  const facts: DocumentFact[] = [
    {
      key: 'trainings',
      label: t('trainings.held'),
      text: formatNumber(told.trainings, locale),
      value: told.trainings,
    },
    { key: 'attendances', label: t('trainings.attendances'), ...headsCell(told.attendances, tongue) },
    { key: 'people', label: t('trainings.people'), ...headsCell(told.people, tongue) },
    { key: 'unnamed', label: t('trainings.unnamed'), ...headsCell(told.unnamedHeads, tongue) },
  ];
  return {
    paragraphs: [t('trainings.note')],
    facts,
    ...(told.answers.length === 0 ? {} : { tables: [answersTable(told, tongue)] }),
    notes: [
      t('trainings.leftOut', { count: told.leftOutWithoutConsent }),
      t('trainings.answersNote'),
      ...(told.answers.length === 0 ? [] : [t('trainings.rounded')]),
      t('trainings.protection', { people: rule.minSites }),
    ],
  };
};
