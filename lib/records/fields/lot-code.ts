import 'server-only';
import { randomInt } from 'node:crypto';
import { drawBatchCode } from '@/lib/growing/batch-code';

/** Draws read-aloud codes with a letter before them that says what they are of; longer ones when asked `again`. */
export function lotCodes(prefix: string): (again: boolean) => string {
  return (again) => `${prefix}-${drawBatchCode(randomInt, again ? 4 : 2)}`;
}
