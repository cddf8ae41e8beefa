import { fewestOfLevel, type MetLevels } from './met-levels';

/** What is asked for: a null season is the year as it was grown. */
export type AskedLevels = {
  readonly speciesId: string;
  readonly materialId: string;
  readonly season: string | null;
};

/**
 * Whether an expectation is for the very material (season) that was asked for. 'few': too few batches of it, so it is for the
 * materials (seasons) as they were grown. 'together': the model tells none apart, there being too few batches of all.
 */
export type LevelStanding = 'told' | 'few' | 'together';

export type Standing = {
  /** Batches of the network that the model of losses learned from. */
  readonly species: number;
  readonly material: number;
  readonly season: number;
  /** Without it nothing is expected: another species is another crop. */
  readonly speciesTold: boolean;
  readonly ofMaterial: LevelStanding;
  /** 'year': the whole year was asked for. */
  readonly ofSeason: LevelStanding | 'year';
};

export function levelStanding(met: MetLevels, { speciesId, materialId, season }: AskedLevels): Standing {
  const count = (of: ReadonlyMap<string, number>, level: string) => of.get(level) ?? 0;
  const standing = (batches: number, told: boolean): LevelStanding =>
    !told ? 'together' : batches < fewestOfLevel ? 'few' : 'told';
  const [species, material] = [count(met.species, speciesId), count(met.materials, materialId)];
  const inSeason = season === null ? 0 : count(met.seasons, season);
  return {
    species,
    material,
    season: inSeason,
    speciesTold: species >= fewestOfLevel,
    ofMaterial: standing(material, met.levelledOut.material),
    ofSeason: season === null ? 'year' : standing(inSeason, met.levelledOut.season),
  };
}

/** What holds for a loss and a yield expected together: of each the standing with fewer batches behind it. */
export function standingOfBoth(one: Standing, other: Standing): Standing {
  const byMaterial = other.material < one.material ? other : one;
  const bySeason = other.season < one.season ? other : one;
  const bySpecies = other.species < one.species ? other : one;
  return {
    species: bySpecies.species,
    speciesTold: bySpecies.speciesTold,
    material: byMaterial.material,
    ofMaterial: byMaterial.ofMaterial,
    season: bySeason.season,
    ofSeason: bySeason.ofSeason,
  };
}
