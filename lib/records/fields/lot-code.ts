import 'server-only';
import { randomInt } from 'node:crypto';
import { drawBatchCode } from '@/lib/growing/batch-code';

const draws = 12;

/** A read-aloud code that `taken` does not know yet, with a letter before it that says what it is of. */
export async function drawFreeCode(
  prefix: string,
  taken: (code: string) => Promise<boolean>,
): Promise<string> {
  const [code] = await drawFreeCodes(prefix, 1, async ([drawn = '']) =>
    (await taken(drawn)) ? new Set([drawn]) : new Set(),
  );
  return code ?? '';
}

/** So many codes, all different; `taken` tells which of those drawn are known already. */
export async function drawFreeCodes(
  prefix: string,
  count: number,
  taken: (codes: readonly string[]) => Promise<ReadonlySet<string>>,
): Promise<string[]> {
  const free = new Set<string>();
  for (let draw = 0; draw < draws && free.size < count; draw += 1) {
    const drawn = Array.from(
      { length: count - free.size },
      () => `${prefix}-${drawBatchCode(randomInt, draw < draws / 2 ? 2 : 4)}`,
    );
    const known = await taken(drawn);
    for (const code of drawn) if (!known.has(code)) free.add(code);
  }
  if (free.size < count) throw new Error(`no free code after ${draws} draws`);
  return [...free];
}
