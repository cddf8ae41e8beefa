import { z } from 'zod';
import { type Season, seasonNames } from '@/lib/growing/season';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';

/** The whole year instead of one season. */
export const wholeYear = 'year';
export const seasonChoices = [...seasonNames, wholeYear] as const;
export type SeasonChoice = Season | typeof wholeYear;

/** What an address asks of one site; undefined is left to what is so at the site, and the page says what that is. */
export type NextAsked = {
  readonly site: string | undefined;
  readonly species: string | undefined;
  readonly material: string | undefined;
  readonly season: SeasonChoice | undefined;
  readonly container: ContainerKind | undefined;
  /** Methods that it should be taken to have, by id. */
  readonly methods: readonly string[] | undefined;
};

const id = z.uuid().transform((value) => value.toLowerCase());
const one = z.object({
  site: id.optional().catch(undefined),
  species: id.optional().catch(undefined),
  material: id.optional().catch(undefined),
  season: z.enum(seasonChoices).optional().catch(undefined),
  container: z.enum(containerKinds).optional().catch(undefined),
});

/** Ticked boxes come along only when one is ticked; this field, always there, tells none from not asked. */
export const equipmentField = 'equipment';
export const theseMethods = 'these';

/** Anything unreadable counts as not asked, so that an old link still opens. */
export function parseNextAsked(query: Record<string, string | string[] | undefined>): NextAsked {
  const single = Object.entries(query).map(([name, value]) => [
    name,
    Array.isArray(value) ? value[0] : value,
  ]);
  const ticked = [query.methods ?? []].flat().flatMap((value) => id.safeParse(value).data ?? []);
  const says = [query[equipmentField]].flat().includes(theseMethods);
  const { site, species, material, season, container } = one.parse(Object.fromEntries(single));
  return {
    ...{ site, species, material, season, container },
    methods: says ? [...new Set(ticked)].sort() : undefined,
  };
}

/** What was asked, in a fixed order of names, so that equal questions have equal addresses. */
export function queryOfNext({ site, species, material, season, container, methods }: NextAsked): string {
  const given = Object.entries({ site, species, material, season, container }).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value]],
  );
  const ticked =
    methods === undefined
      ? []
      : [[equipmentField, theseMethods], ...methods.map((method) => ['methods', method])];
  return new URLSearchParams([...given, ...ticked]).toString();
}
