import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { WordPlace } from '@/lib/report/content/report-indicators.input';
import type { DocumentSection, DocumentStory, ReportDocument } from '@/lib/report/document/report-document';
import { formatInstant } from '../../format/instant-text';
import { formatNumber } from '../../format/number-text';
import { changeTable } from './change-table';
import { indicatorSections } from './indicator-sections';
import type { ReportTongue } from './report-tongue';
import { wordingTable } from './wording-table';

/** A report as it is stored, whoever opens it. */
export type ReportToTell = {
  readonly title: string;
  readonly version: number;
  /** ISO 8601; undefined for a draft. */
  readonly publishedAt: string | undefined;
  readonly content: FunderReportContent;
  readonly words: Partial<Record<WordPlace, string>>;
  readonly stories: readonly DocumentStory[];
};

const wordsIn = (words: ReportToTell['words'], place: WordPlace) => {
  const said = words[place];
  return said === undefined ? {} : { words: said };
};

function glance({ content, words }: ReportToTell, { t, locale }: ReportTongue): DocumentSection {
  const facts = ['sitesActive', 'peopleActive', 'batchesStarted'] as const;
  return {
    key: 'glance',
    heading: t('glanceHeading'),
    ...wordsIn(words, 'opening'),
    paragraphs: [],
    facts: facts.map((key) => ({
      key,
      label: t(key),
      text: formatNumber(content[key], locale),
      value: content[key],
    })),
    notes: [t('peopleNote')],
  };
}

function indicators({ content, words }: ReportToTell, tongue: ReportTongue): DocumentSection[] {
  return content.indicators.flatMap((indicator) => {
    const section = indicatorSections[indicator]?.(content, tongue);
    return section
      ? [
          {
            key: indicator,
            heading: tongue.t(`indicators.${indicator}`),
            ...wordsIn(words, indicator),
            ...section,
          },
        ]
      : [];
  });
}

function changes({ content }: ReportToTell, tongue: ReportTongue): DocumentSection[] {
  const { t, date } = tongue;
  if (content.baseline === undefined || content.changes.length === 0) return [];
  const { from, to } = content.baseline;
  return [
    {
      key: 'changes',
      heading: t('changes.heading'),
      paragraphs: [t('changes.note', { from: date(from), to: date(to) })],
      tables: [changeTable(content.changes, tongue)],
      notes: [t('changes.formula')],
    },
  ];
}

function tales({ stories, words }: ReportToTell, { t }: ReportTongue): DocumentSection[] {
  if (stories.length === 0 && words.closing === undefined) return [];
  return [
    {
      key: 'stories',
      heading: t('stories.heading'),
      ...wordsIn(words, 'closing'),
      paragraphs: stories.length === 0 ? [] : [t('stories.note')],
      stories,
    },
  ];
}

function reading({ content }: ReportToTell, tongue: ReportTongue): DocumentSection {
  const { t } = tongue;
  const rule = { sites: content.rule.minSites, percent: content.rule.topTwoPercent };
  return {
    key: 'reading',
    heading: t('howHeading'),
    paragraphs: [t('howProtected', rule)],
    tables: [wordingTable(content, tongue)],
    notes: [t('wordings.note')],
  };
}

/** A stored report in one reader's words: what every form of it draws. */
export function buildDocument(report: ReportToTell, tongue: ReportTongue): ReportDocument {
  const { t, date, locale, timeZone } = tongue;
  const { content, version, publishedAt } = report;
  const instant = (at: string) => formatInstant(new Date(at), timeZone, locale);
  return {
    title: report.title,
    lead: t('scope', { network: content.networkName, from: date(content.from), to: date(content.to) }),
    language: tongue.language,
    standing:
      publishedAt === undefined
        ? t('standing.draft', { version })
        : t('standing.published', { version, date: instant(publishedAt) }),
    colophon: [t('asOf', { date: instant(content.builtAt) }), t('colophon')],
    sections: [
      glance(report, tongue),
      ...indicators(report, tongue),
      ...changes(report, tongue),
      ...tales(report, tongue),
      reading(report, tongue),
    ],
  };
}
