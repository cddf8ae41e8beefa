import { getLocale, getTranslations } from 'next-intl/server';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';
import { dynamicWords } from '../i18n/dynamic-words';
import type { StatusTone } from '../page/status';

export type JudgementText = { readonly tone: StatusTone; readonly word: string; readonly sentence: string };

const tones: Readonly<Record<string, StatusTone>> = {
  as_planned: 'good',
  running: 'watch',
  too_long: 'watch',
};

/** What the readings say about a run, as a state and one plain sentence. */
export async function loadJudgement(
  { judgement, window }: TreatmentView,
  unit: TemperatureUnit,
): Promise<JudgementText> {
  const t = await getTranslations('treatments.judgement');
  const words = await dynamicWords();
  const locale = await getLocale();
  if (judgement.kind === 'none') return { tone: 'plain', word: t('none'), sentence: t('noneSentence') };
  const { check } = judgement;
  if (check.kind === 'cannot-compute') {
    const key = `treatments.cannot.${check.reason}`;
    const values = Object.fromEntries(Object.entries(check.values));
    return {
      tone: 'watch',
      word: t('cannot'),
      sentence: words.has(key) ? words(key, values) : t('cannotSentence'),
    };
  }
  const { verdict } = check.value;
  const number = (value: number) => new Intl.NumberFormat(locale, { maximumFractionDigits: 0 }).format(value);
  const figures = (() => {
    switch (judgement.kind) {
      case 'heat': {
        const value = judgement.check.kind === 'value' ? judgement.check.value : undefined;
        return {
          minutes: number(Math.floor(value?.minutesInWindow ?? 0)),
          above: number(value?.minutesAbove ?? 0),
          left: number(Math.ceil(value?.minutesLeft ?? 0)),
          least: number(window?.kind === 'heat' ? window.minMinutes : 0),
          low: formatTemperature(window?.kind === 'heat' ? window.lowCelsius : 0, unit, locale),
          highest: formatTemperature(value?.highestCelsius ?? 0, unit, locale),
        };
      }
      case 'lime': {
        const value = judgement.check.kind === 'value' ? judgement.check.value : undefined;
        const hours = (value?.minutesSubmerged ?? 0) / 60;
        return {
          least: new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(
            (window?.kind === 'lime' ? window.minMinutes : 0) / 60,
          ),
          hours: new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(hours),
          lowest: String(value?.lowestPh ?? '–'),
        };
      }
      case 'ferment': {
        const value = judgement.check.kind === 'value' ? judgement.check.value : undefined;
        return {
          days: value?.dayCount ?? 0,
          least: window?.kind === 'ferment' ? window.minDays : 0,
          most: window?.kind === 'ferment' ? window.maxDays : 0,
        };
      }
    }
  })();
  return {
    tone: tones[verdict] ?? 'bad',
    word: words(`treatments.verdict.${verdict}`),
    sentence: words(`treatments.sentence.${judgement.kind}.${verdict}`, figures),
  };
}
