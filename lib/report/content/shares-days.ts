type Days = { readonly from: string; readonly to: string };

/** Whether two stretches of days have one in common; equal ones have all. */
export function sharesDays(one: Days | undefined, other: Days | undefined): boolean {
  return one !== undefined && other !== undefined && one.from <= other.to && other.from <= one.to;
}
