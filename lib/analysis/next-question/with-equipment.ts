import type { NextChoice, NextPart } from './next-answer';
import type { Equipment } from './read-equipment';
import { settleChoice } from './settle-choice';

/** A part as it is for a site that can use these methods and no others: what does best and would teach most follows. */
export function withEquipment(part: NextPart, { usable, unsaid }: Equipment): NextPart {
  return { ...part, unsaid, choices: part.choices.map((choice) => among(choice, usable, part.usualUnits)) };
}

function among(choice: NextChoice, usable: readonly string[], units: number): NextChoice {
  const outlooks = choice.outlooks.filter(({ methodId }) => usable.includes(methodId));
  const left = choice.outlooks.filter(({ methodId }) => !usable.includes(methodId));
  const methods = outlooks.map(({ methodId }) => methodId);
  return {
    ...choice,
    outlooks,
    notHere: [...choice.notHere, ...left.map(({ methodId }) => methodId)],
    ...settleChoice(choice.joints, methods, units),
  };
}
