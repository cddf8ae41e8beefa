import type { ReaderUnits } from '@/lib/access/current-units';
import { isCalendarDate } from '@/lib/growing/calendar-date';
import { formatMass } from '@/lib/growing/format-quantity';
import { findLogWood } from '@/lib/growing/log-wood';
import { formatDate } from '../format/date-text';
import { formatInstant } from '../format/instant-text';
import { formatArea, formatLength } from '../format/length-text';
import { formatNumber } from '../format/number-text';
import { formatTemperature } from '../format/temperature-text';
import { formatVolume } from '../format/volume-text';
import type { DynamicWords } from '../i18n/dynamic-words';

/** The reader of a history: words, writing, units and the zone of its instants. */
export type HistoryReader = {
  readonly words: DynamicWords;
  readonly language: 'en' | 'es';
  readonly locale: string;
  readonly units: ReaderUnits;
  readonly timeZone: string;
};

/** Vocabulary of columns whose name is not their vocabulary's; `kind` and `role` depend on the table. */
const vocabularyOf: Readonly<Record<string, string>> = {
  action: 'findingAction',
  cause: 'lossCause',
  form: 'spawnForm',
  material: 'bedLayerMaterial',
  measure: 'conditionMeasure',
  outlet: 'outletKind',
  place: 'readingPlace',
  practice: 'practiceKind',
  sign: 'contaminationSign',
  stage: 'cropStage',
  topic: 'trainingTopic',
  trim_default: 'trimState',
  verdict: 'suitabilityVerdict',
  'check.kind': 'checkKind',
  'material.kind': 'materialKind',
  'method.kind': 'methodKind',
  'signal_answer.answer': 'signalAnswerKind',
  'sharing_agreement.with_funder': 'sharingLevel',
  'sharing_agreement.with_members': 'sharingLevel',
  'site.kind': 'siteKind',
  'batch_component.role': 'componentRole',
  'membership.role': 'membershipRole',
};

function camel(name: string): string {
  return name.replace(/_(\w)/g, (_all, letter: string) => letter.toUpperCase());
}

function numberText(name: string, value: number, { units, locale, language }: HistoryReader): string {
  if (name.endsWith('grams')) return formatMass(value, units.massUnit, locale);
  if (name.endsWith('_mm')) return formatLength(value, units.massUnit, locale);
  if (name.endsWith('_cm2')) return formatArea(value, units.massUnit, locale);
  if (name.endsWith('millilitres')) return formatVolume(value / 1000, units.volumeUnit, locale);
  if (/(^|_)celsius/.test(name)) return formatTemperature(value, units.temperatureUnit, locale);
  if (name === 'log_wood_code') return findLogWood(value)?.name[language] ?? String(value);
  return formatNumber(value, locale, Number.isInteger(value) ? 0 : 2);
}

/** One value of a record as its history keeps it, in the reader's words, writing and units. */
export function historyValue(table: string, name: string, value: unknown, reader: HistoryReader): string {
  const { words, locale, timeZone } = reader;
  if (value === null || value === undefined || value === '') return '–';
  if (typeof value === 'boolean') return words(value ? 'common.yes' : 'common.no');
  if (typeof value === 'number') return numberText(name, value, reader);
  if (Array.isArray(value)) return value.map(String).join(', ');
  if (typeof value !== 'string') return '…';
  if (isCalendarDate(value)) return formatDate(value, locale);
  if (name.endsWith('_at')) return formatInstant(new Date(value), timeZone, locale);
  const key = `vocabulary.${vocabularyOf[`${table}.${name}`] ?? vocabularyOf[name] ?? camel(name)}.${value}`;
  return words.has(key) ? words(key) : value;
}
