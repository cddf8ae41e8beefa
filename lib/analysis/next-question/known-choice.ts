import type { NextAsked } from './next-choice.input';
import type { NextOptions } from './read-next-options';

/** What was asked as far as it can be chosen: each other id would be a fit of its own, kept for ever. */
export function knownChoice(
  asked: NextAsked,
  options: Pick<NextOptions, 'species' | 'materials' | 'methods'>,
): NextAsked {
  const { species, material, methods } = asked;
  return {
    ...asked,
    species: options.species.find((id) => id === species),
    material: options.materials.find(({ id }) => id === material)?.id,
    methods: methods?.filter((id) => options.methods.includes(id)),
  };
}
