import { invalid, ok, type Result } from '@/lib/base/result';
import { drawFreeCodes } from './lot-code';

type Wanting = { readonly code: string | null };

/**
 * The code of each new lot: as wanted where nobody has it, drawn where none is wanted. Of two that want one code the
 * first gets it. `taken` tells which of some codes the network knows already.
 */
export async function freeCodes(
  lots: readonly Wanting[],
  prefix: string,
  taken: (codes: readonly string[]) => Promise<ReadonlySet<string>>,
): Promise<Result<string>[]> {
  const wanted = lots.flatMap(({ code }) => code ?? []);
  const gone = new Set(wanted.length === 0 ? [] : await taken(wanted));
  const own = new Set(wanted);
  const drawn = await drawFreeCodes(
    prefix,
    lots.filter(({ code }) => code === null).length,
    async (codes) => new Set([...(await taken(codes)), ...own]),
  );
  return lots.map(({ code }): Result<string> => {
    if (code === null) return ok(drawn.pop() ?? '');
    if (gone.has(code)) return invalid('code', 'code-taken', { code });
    gone.add(code);
    return ok(code);
  });
}
