import type { NextChoice, NextPart } from '@/lib/analysis/next-question/next-answer';
import type { NextOptions } from '@/lib/analysis/next-question/read-next-options';
import type { InsightWords } from './insight-words';
import { asInside } from './next-names';
import { seasonAndMonths } from './season-words';

type Props = {
  readonly choice: NextChoice;
  readonly part: NextPart;
  readonly options: Pick<NextOptions, 'hemisphere' | 'timeZone'>;
  readonly words: InsightWords;
};

/** How many batches stand behind what is expected of the choice, and what it falls back to where they are too few. */
export function NextStanding({ choice, part, options, words }: Props) {
  const { t, names, units } = words;
  const { standing } = choice;
  const speciesName = asInside(names.speciesName(choice.speciesId));
  const materialName = asInside(names.materialName(choice.materialId));
  const half = t(`next.half.${options.hemisphere}`, { zone: options.timeZone });
  if (standing === null) return <p className="quiet">{half}</p>;
  const { species, material, season } = standing;
  if (!standing.speciesTold)
    return <p>{t('next.fewSpecies', { count: species, species: speciesName, units })}</p>;
  const seasonName = part.season === null ? '' : seasonAndMonths(part.season, options.hemisphere, words).name;
  const counts = { species, material, speciesName, materialName };
  return (
    <>
      {standing.ofMaterial === 'few' ? (
        <p>{t('next.fewMaterial', { count: material, material: materialName, species: speciesName })}</p>
      ) : null}
      {standing.ofSeason === 'few' ? (
        <p>{t('next.fewSeason', { count: season, season: seasonName, species: speciesName })}</p>
      ) : null}
      {standing.ofMaterial === 'together' || standing.ofSeason === 'together' ? (
        <p>{t('next.notLevelled')}</p>
      ) : null}
      <p className="quiet">
        {part.season === null
          ? t('next.behind', counts)
          : t('next.behindSeason', { ...counts, season, seasonName })}{' '}
        {t('next.shifts')} {half}
      </p>
    </>
  );
}
