/**
 * The address a label carries, in capitals: then its code needs fewer modules, and web addresses mean the same
 * (host names have no case, and the path is read without).
 *
 * @param site the address of this installation, such as `https://pinset.example`
 */
export function labelAddress(site: string, labelKey: string, unit?: number): string {
  const path = unit === undefined ? labelKey : `${labelKey}/${unit}`;
  return `${new URL(site).origin}/b/${path}`.toUpperCase();
}
