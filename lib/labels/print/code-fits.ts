import type { SheetLayout } from '../sheet/sheet-layout';
import { divideLabel } from './arrange-label';
import { labelCode } from './label-code';

/** Whether the code of an address fits the labels of a sheet with modules that a phone can read. */
export function codeFits(address: string, { labelWidthMm, labelHeightMm }: SheetLayout): boolean {
  const { code } = divideLabel({ widthMm: labelWidthMm, heightMm: labelHeightMm });
  return labelCode(address, code.widthMm) !== undefined;
}
