import { getLocale, getTranslations } from 'next-intl/server';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import type { RepeatView } from '@/lib/records/batch/get-repeat.query';
import { formatDate } from '../format/date-text';
import { formatInstant } from '../format/instant-text';
import { formatMassWithTwin } from '../format/mass-text';

type Props = { readonly repeat: RepeatView; readonly language: Language; readonly massUnit: MassUnit };

/** What was carried over from the batch that is repeated, and what was proposed or left out, each with its reason. */
export async function RepeatNotes({ repeat, language, massUnit }: Props) {
  const t = await getTranslations('batches.repeat');
  const words = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
  const { batch, treatment, spawn } = repeat;
  const mass = (grams: number) => formatMassWithTwin(Math.max(0, grams), massUnit, locale);
  const [first] = batch.components;
  const untreated = treatment === null && first?.runId !== null;
  return (
    <ul>
      <li>
        {t('carried', {
          code: batch.code,
          units: words(batch.containerKind, { count: batch.unitCount }),
          species: batch.species[language],
          date: formatDate(batch.inoculatedOn, locale),
        })}
      </li>
      {treatment === null ? (
        untreated ? (
          <li>{t('noRun')}</li>
        ) : null
      ) : (
        <li>
          {t(treatment.spawned ? 'sameRun' : 'newRun', {
            method: treatment.method[language],
            code: treatment.code,
            date: formatInstant(treatment.endedAt, batch.timeZone, locale),
          })}
        </li>
      )}
      {spawn.map(({ lotId, lotCode, leftGrams, neededGrams, enough }) => (
        <li key={lotId}>
          {leftGrams === null
            ? t('leftUnknown', { lot: lotCode })
            : enough === false && neededGrams !== null
              ? t('leftShort', { lot: lotCode, left: mass(leftGrams), needed: mass(neededGrams) })
              : t('left', { lot: lotCode, left: mass(leftGrams) })}
        </li>
      ))}
      {batch.moistureSource === 'measured' ? <li>{t('moisture')}</li> : null}
    </ul>
  );
}
