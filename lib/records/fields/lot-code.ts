import 'server-only';
import { randomInt } from 'node:crypto';
import { drawBatchCode } from '@/lib/growing/batch-code';

const draws = 12;

/** A read-aloud code that `taken` does not know yet, with a letter before it that says what it is of. */
export async function drawFreeCode(
  prefix: string,
  taken: (code: string) => Promise<boolean>,
): Promise<string> {
  for (let draw = 0; draw < draws; draw += 1) {
    const code = `${prefix}-${drawBatchCode(randomInt, draw < draws / 2 ? 2 : 4)}`;
    if (!(await taken(code))) return code;
  }
  throw new Error(`no free code after ${draws} draws`);
}
