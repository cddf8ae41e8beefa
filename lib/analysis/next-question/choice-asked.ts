import type { NextChoice, NextPart } from './next-answer';
import type { NextAsked } from './next-choice.input';

/** What a part says of the species and material asked for, of what the site grew most first; undefined where it says nothing. */
export function choiceAsked(
  { choices }: NextPart,
  { species, material }: Pick<NextAsked, 'species' | 'material'>,
): NextChoice | undefined {
  return choices.find(
    ({ speciesId, materialId }) =>
      (species ?? speciesId) === speciesId && (material ?? materialId) === materialId,
  );
}
