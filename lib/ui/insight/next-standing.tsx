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
  if (!standing.speciesTold) return <p>{t('next.fewSpecies', { species: speciesName, units })}</p>;
  const seasonName = part.season === null ? '' : seasonAndMonths(part.season, options.hemisphere, words).name;
  const behind = [
    ...(species === null ? [] : [t('next.behindOf', { count: species, name: speciesName })]),
    ...(material === null ? [] : [t('next.behindOn', { count: material, name: materialName })]),
    ...(season === null ? [] : [t('next.behindIn', { count: season, name: seasonName })]),
  ];
  return (
    <>
      {standing.ofMaterial === 'few' ? (
        <p>{t('next.fewMaterial', { material: materialName, species: speciesName })}</p>
      ) : null}
      {standing.ofSeason === 'few' ? (
        <p>{t('next.fewSeason', { season: seasonName, species: speciesName })}</p>
      ) : null}
      {standing.ofMaterial === 'together' || standing.ofSeason === 'together' ? (
        <p>{t('next.notLevelled')}</p>
      ) : null}
      <p className="quiet">
        {behind.length === 0 ? '' : `${t('next.behind', { counts: behind.join(', ') })} `}
        {t('next.shifts')} {half}
      </p>
    </>
  );
}
