import { fewestOthers } from './fewest-others';
import { fewestOfLevel, type MetLevel, type MetLevels } from './met-levels';

/** What is asked for at a site: a null season is the year as it was grown. */
export type AskedLevels = {
  readonly siteId: string;
  readonly speciesId: string;
  readonly materialId: string;
  readonly season: string | null;
};

/**
 * Whether an expectation is for the very material (season) that was asked for. 'few': too few batches of it, so it is for the
 * materials (seasons) in which the species was grown. 'together': the model tells none apart, there being too few of all.
 */
export type LevelStanding = 'told' | 'few' | 'together';

export type Standing = {
  /** Batches of the network that the models learned from; null where fewer than three other sites stand behind them. */
  readonly species: number | null;
  readonly material: number | null;
  readonly season: number | null;
  /** Without it nothing is expected: another species is another crop. */
  readonly speciesTold: boolean;
  readonly ofMaterial: LevelStanding;
  /** 'year': the whole year was asked for. */
  readonly ofSeason: LevelStanding | 'year';
};

export function levelStanding(
  met: MetLevels,
  { siteId, speciesId, materialId, season }: AskedLevels,
): Standing {
  const said = (level: MetLevel | undefined) => {
    const others = (level?.sites.size ?? 0) - (level?.sites.has(siteId) ? 1 : 0);
    return level !== undefined && others >= fewestOthers ? level.batches : null;
  };
  const carries = (level: MetLevel | undefined) => (level?.batches ?? 0) >= fewestOfLevel;
  const standing = (level: MetLevel | undefined, told: boolean): LevelStanding =>
    !told ? 'together' : carries(level) ? 'told' : 'few';
  const [species, material] = [met.species.get(speciesId), met.materials.get(materialId)];
  const inSeason = season === null ? undefined : met.seasons.get(season);
  return {
    species: said(species),
    material: said(material),
    season: said(inSeason),
    speciesTold: carries(species),
    ofMaterial: standing(material, met.levelledOut.material),
    ofSeason: season === null ? 'year' : standing(inSeason, met.levelledOut.season),
  };
}

const worstFirst = ['together', 'few', 'told', 'year'] as const;
const worse = <T extends LevelStanding | 'year'>(one: T, other: T): T =>
  worstFirst.indexOf(other) < worstFirst.indexOf(one) ? other : one;
const fewer = (one: number | null, other: number | null) =>
  one === null || other === null ? null : Math.min(one, other);

/** What holds for a loss and a yield expected together: of each the worse. */
export function standingOfBoth(one: Standing, other: Standing): Standing {
  return {
    species: fewer(one.species, other.species),
    material: fewer(one.material, other.material),
    season: fewer(one.season, other.season),
    speciesTold: one.speciesTold && other.speciesTold,
    ofMaterial: worse(one.ofMaterial, other.ofMaterial),
    ofSeason: worse(one.ofSeason, other.ofSeason),
  };
}
