import { getLocale, getTranslations } from 'next-intl/server';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { contaminationSigns } from '@/lib/growing/contamination-signs';
import { formatMass } from '@/lib/growing/format-quantity';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { FollowUpView, StoryEntry } from '@/lib/records/batch/batch-story';
import { formatDate } from '../format/date-text';

type Reader = {
  readonly language: Language;
  readonly unit: MassUnit;
  readonly container: ContainerKind;
  readonly secondLife: boolean;
};

/** An entry in words: its headline, and the lines under it. */
export type EntryWords = { readonly title: string; readonly lines: readonly string[] };

/** What a sign often is, in words that keep to "looks like". */
function likelyGroups(sign: string, language: Language): string {
  const groups = contaminationSigns.find((one) => one.sign === sign)?.looksLike ?? [];
  const join = language === 'es' ? ' o ' : ' or ';
  return groups
    .map(({ name, genera }) => `${name[language].toLocaleLowerCase()} (${genera.join(', ')})`)
    .join(join);
}

/** Makes the words of the entries of a batch's story. */
export async function loadEntryWords({ language, unit, container, secondLife }: Reader) {
  const t = await getTranslations('batches.story');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const numbered = (numbers: readonly number[]) =>
    numbers.length === 0 ? [] : [t('unitNumbers', { count: numbers.length, numbers: numbers.join(', ') })];

  const followUp = ({ on, units, action }: FollowUpView): string =>
    t('followUp', {
      date: formatDate(on, locale),
      units,
      action: words(`findingAction.${action}`).toLocaleLowerCase(),
    });

  const told = (entry: StoryEntry): EntryWords => {
    switch (entry.kind) {
      case 'inoculated':
        return {
          title: t(secondLife ? 'movedHere' : 'inoculated', {
            units: words(`containerCount.${container}`, { count: entry.units }),
          }),
          lines: [],
        };
      case 'look':
        return { title: t(container === 'bed' ? 'lookBed' : 'look'), lines: [] };
      case 'check':
        return { title: words(`checkKind.${entry.what}`), lines: [] };
      case 'finding': {
        const group = likelyGroups(entry.sign, language);
        const sign = words(`contaminationSign.${entry.sign}`).toLocaleLowerCase();
        return {
          title: t('finding', { units: entry.units, sign }),
          lines: [
            t('findingDetail', {
              stage: words(`cropStage.${entry.stage}`),
              action: words(`findingAction.${entry.action}`).toLocaleLowerCase(),
            }),
            ...(group === '' ? [] : [t('looksLike', { group })]),
            ...numbered(entry.unitNumbers),
          ],
        };
      }
      case 'loss': {
        const cause = words(`lossCause.${entry.cause}`).toLocaleLowerCase();
        const before = entry.contaminatedUnits;
        return {
          title: t('loss', { units: entry.units, cause }),
          lines: [
            ...(before === 0 ? [] : [t('lossContaminated', { count: before })]),
            ...numbered(entry.unitNumbers),
          ],
        };
      }
      case 'weighing': {
        const mass = formatMass(entry.grams, unit, locale);
        return {
          title: t(entry.shared ? 'weighingShared' : 'weighing', { mass, flush: entry.flush }),
          lines: entry.forced === null ? [] : [t(entry.forced ? 'forced' : 'natural')],
        };
      }
      case 'closed':
        return {
          title: t('closed', {
            why: entry.why === null ? '' : words(`closeReason.${entry.why}`).toLocaleLowerCase(),
          }),
          lines: [
            ...(entry.spent === null
              ? []
              : [t('spent', { where: words(`spentDestination.${entry.spent}`) })]),
            ...(entry.noHarvest === null
              ? []
              : [t('noHarvest', { answer: words(`noHarvest.${entry.noHarvest}`) })]),
          ],
        };
    }
  };
  return { told, followUp };
}
