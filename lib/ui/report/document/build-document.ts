import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { GroundPart } from '@/lib/report/content/ground';
import type { WordPlace } from '@/lib/report/content/report-indicators.input';
import type { DocumentSection, DocumentStory, ReportDocument } from '@/lib/report/document/report-document';
import type { ReportStory } from '@/lib/report/story/list-stories';
import { formatInstant } from '../../format/instant-text';
import { changeTable } from './change-table';
import { glanceSection } from './glance-section';
import { indicatorSections } from './indicator-sections';
import type { ReportTongue } from './report-tongue';
import { sitesParagraphs } from './sites-paragraphs';
import { wordingTable } from './wording-table';

/** A report as it is stored, whoever opens it. */
export type ReportToTell = {
  readonly title: string;
  readonly version: number;
  /** ISO 8601; undefined for a draft. */
  readonly publishedAt: string | undefined;
  readonly content: FunderReportContent;
  readonly words: Partial<Record<WordPlace, string>>;
  readonly stories: readonly ReportStory[];
};

const wordsIn = (words: ReportToTell['words'], place: WordPlace) => {
  const said = words[place];
  return said === undefined ? {} : { words: said };
};

const carriedNote = ({ content }: ReportToTell, part: GroundPart, { t }: ReportTongue): string[] => {
  const version = content.carried[part];
  const sites = content.rule.minSites;
  return [
    ...(version === undefined ? [] : [t('carried', { version, sites })]),
    ...(content.keptBack?.includes(part) ? [t('keptBack', { sites })] : []),
  ];
};

function glance(report: ReportToTell, tongue: ReportTongue): DocumentSection {
  const section = glanceSection(report, tongue);
  return {
    ...section,
    ...wordsIn(report.words, 'opening'),
    paragraphs: [...section.paragraphs, ...sitesParagraphs(report.content, tongue)],
    notes: [...(section.notes ?? []), ...carriedNote(report, 'glance', tongue)],
  };
}

function indicators(report: ReportToTell, tongue: ReportTongue): DocumentSection[] {
  const { content, words } = report;
  return content.indicators.map((indicator) => {
    const section = indicatorSections[indicator](content, tongue);
    return {
      key: indicator,
      heading: tongue.t(`indicators.${indicator}`),
      ...wordsIn(words, indicator),
      ...section,
      notes: [...(section.notes ?? []), ...carriedNote(report, indicator, tongue)],
    };
  });
}

/** Which amounts beside the baseline stand as published before: those of the baseline, or those told above. */
function carriedChanges(
  { carried, keptBack, rule, changes: rows }: FunderReportContent,
  { t }: ReportTongue,
): string[] {
  const above = (['harvest', 'residues', 'sales'] as const).some(
    (part) => carried[part] !== undefined && rows.some(({ key }) => key === part),
  );
  return [
    ...(above ? [t('changes.carriedNow')] : []),
    ...(keptBack?.includes('baseline') ? [t('keptBack', { sites: rule.minSites })] : []),
    ...(carried.baseline === undefined ? [] : [t('changes.carriedBefore', { sites: rule.minSites })]),
  ];
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
      notes: [t('changes.formula'), ...carriedChanges(content, tongue)],
    },
  ];
}

/** A story as it may still be told. */
function toldStory(
  { id, title, words, picture, withdrawn }: ReportStory,
  { t, date }: ReportTongue,
): DocumentStory {
  if (withdrawn === undefined) return { id, title, words, picture };
  const on = { date: date(withdrawn.on) };
  return withdrawn.part === 'story'
    ? { id, title: t('stories.goneTitle'), words: '', picture, withdrawal: t('stories.gone', on) }
    : { id, title, words, picture, withdrawal: t('stories.pictureGone', on) };
}

function tales({ stories, words }: ReportToTell, tongue: ReportTongue): DocumentSection[] {
  const { t } = tongue;
  if (stories.length === 0 && words.closing === undefined) return [];
  return [
    {
      key: 'stories',
      heading: t('stories.heading'),
      ...wordsIn(words, 'closing'),
      paragraphs: stories.length === 0 ? [] : [t('stories.note')],
      stories: stories.map((story) => toldStory(story, tongue)),
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
    lead: t(content.programme === undefined ? 'scope' : 'scopeOfProgramme', {
      ...(content.programme === undefined ? {} : { programme: content.programme }),
      network: content.networkName,
      from: date(content.from),
      to: date(content.to),
    }),
    language: tongue.language,
    wordsLabel: t('wordsLabel'),
    protectedWord: t('protected'),
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
