import { encode } from 'uqr';

/** A code as its modules, dark is true; without the quiet zone. */
export type LabelCode = {
  readonly modules: readonly (readonly boolean[])[];
  readonly level: 'M' | 'Q' | 'H';
  /** Edge of one module. */
  readonly moduleMm: number;
};

/** Light modules on every side, ISO/IEC 18004. */
export const quietModules = 4;
/** Smallest module that a phone reads from damp plastic at arm's length; common practice, our choice. */
export const leastModuleMm = 0.4;

/**
 * The code of an address that fits a square of `sideMm`, quiet zone included, with the highest error correction whose
 * modules stay large enough: H mends about 30 % of the code, Q 25 %, M 15 % (ISO/IEC 18004). Undefined when even M would
 * be too fine to read.
 */
export function labelCode(address: string, sideMm: number): LabelCode | undefined {
  for (const level of ['H', 'Q', 'M'] as const) {
    const { data, size } = encode(address, { ecc: level, border: 0, boostEcc: true });
    const moduleMm = sideMm / (size + 2 * quietModules);
    if (moduleMm >= leastModuleMm) return { modules: data, level, moduleMm };
  }
  return undefined;
}
