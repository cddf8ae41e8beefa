import { z } from 'zod';
import type { Address } from '@/lib/base/given-once';
import type { FieldError } from '@/lib/base/result';
import { addDays } from '@/lib/growing/calendar-date';
import {
  type AskedComparison,
  type ComparisonDefaults,
  type ComparisonFilter,
  completeFilter,
  parseComparisonQuery,
  together,
} from '../comparison/comparison-filter.input';
import { dayProblems } from '../comparison/day-problems';
import type { LevelledOut } from './model-terms';

/** What is levelled out besides sites and species, as the address says it. */
export const levelChoices = ['none', 'material', 'season', 'both'] as const;
export type LevelChoice = (typeof levelChoices)[number];

export type AskedQuestion = Omit<AskedComparison, 'method' | 'site'> & { readonly level: LevelChoice };

const level = z.enum(levelChoices).catch('none');

/** Three years: more seasons than the comparison opens on, since what differs between sites and seasons is levelled out. */
const daysAsked = 1095;

export function parseQuestion(query: Address): AskedQuestion {
  const { method: _method, site: _site, ...asked } = parseComparisonQuery(query);
  return { ...asked, level: level.parse(query.level) };
}

/** What was asked, and nothing of what was left to the defaults, so that the same address asks the same next month. */
export function queryOfQuestion({
  from,
  to,
  species,
  container,
  material,
  level: choice,
}: AskedQuestion): string {
  const given = Object.entries({ from, to, species, container, material }).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value]],
  );
  return new URLSearchParams([...given, ...(choice === 'none' ? [] : [['level', choice]])]).toString();
}

/** The days on which a question opens. */
const usualDays = (asked: Pick<AskedQuestion, 'to'>, defaults: ComparisonDefaults) => ({
  from: addDays(asked.to ?? defaults.to, -daysAsked),
  to: defaults.to,
});

/** What is wrong with the days that an address asks a question about. */
export function dayProblemsOfQuestion(
  address: Address,
  defaults: ComparisonDefaults | undefined,
): readonly FieldError[] {
  return defaults === undefined
    ? []
    : dayProblems(address, usualDays(parseComparisonQuery(address), defaults));
}

/** The batches asked about: all species together unless one is asked for, since species are levelled out. */
export function filterOfQuestion(asked: AskedQuestion, defaults: ComparisonDefaults): ComparisonFilter {
  const { level: _level, ...rest } = asked;
  return completeFilter(
    { ...rest, species: asked.species ?? together, method: undefined, site: undefined },
    { ...defaults, ...usualDays(asked, defaults) },
  );
}

export function levelledOutOf(choice: LevelChoice): LevelledOut {
  return {
    material: choice === 'material' || choice === 'both',
    season: choice === 'season' || choice === 'both',
  };
}
