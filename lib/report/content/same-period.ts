type Days = { readonly from: string; readonly to: string };

export function samePeriod(one: Days | undefined, other: Days | undefined): boolean {
  return one !== undefined && other !== undefined && one.from === other.from && one.to === other.to;
}
