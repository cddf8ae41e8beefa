import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';
import { baselineStretch, knownStretches, type NamedStretch, periodStretches } from './known-stretches';
import { stretchTells } from './stretch-tells';
import type { ToldTotal } from './told-totals';

const called = (name: string, stretches: readonly NamedStretch[]) =>
  stretches.filter((one) => one.name === name);

/** Where in some of its parts a report tells sums that, with those that readers have of any other stretches of days, tell of few sites. */
export function besideStretches(
  built: BuiltReport,
  earlier: readonly BuiltReport[],
  parts: readonly GroundPart[],
): { readonly part: GroundPart; readonly table: string }[] {
  const known = earlier.flatMap(knownStretches);
  return periodStretches(built).filter(
    (own) => parts.includes(own.part) && stretchTells(own, called(own.name, known), built.content.rule),
  );
}

/** Whether a total of a report's baseline does so, also with the sums of the report's own period. */
export function baselineStretchTells(
  total: ToldTotal,
  built: BuiltReport,
  earlier: readonly BuiltReport[],
): boolean {
  const own = baselineStretch(built, total);
  if (!own) return false;
  const known = [...periodStretches(built), ...earlier.flatMap(knownStretches)];
  return stretchTells(own, called(own.name, known), built.content.rule);
}
