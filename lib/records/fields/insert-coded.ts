import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { insertRowsUnlessThere, type RowOf } from '@/lib/access/insert-rows';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { Coded, CodedTable } from './made-before';

const draws = 12;

export type WantingCode<Row> = {
  readonly id: string;
  /** The code as it is to be stored; null: one is drawn. */
  readonly wanted: string | null;
  readonly row: (code: string) => Row;
};

/**
 * Inserts records, each under a code that is free in the whole network. Codes of other sites cannot be read here, so
 * the unique index decides: a row that meets a taken code is not inserted, and where it was drawn the next draw is
 * tried. Answers in the order given; of two that want one code the first gets it.
 *
 * @param draw a code to try; `again` once many were taken, for longer ones
 */
export async function insertCoded<T extends CodedTable>(
  context: WriteContext,
  table: T,
  records: readonly WantingCode<RowOf<T>>[],
  draw: (again: boolean) => string,
): Promise<Result<Coded>[]> {
  const answers: Result<Coded>[] = records.map(() => invalid('', 'already-there'));
  let open = records.map((record, at) => ({ ...record, at }));
  for (let tries = 0; tries < draws && open.length > 0; tries += 1) {
    const tried = open.map((one) => ({ ...one, code: one.wanted ?? draw(tries >= draws / 2) }));
    const inserted = await insertRowsUnlessThere(
      context,
      table,
      tried.map(({ row, code }) => row(code)),
    );
    for (const { at, id, code, wanted } of tried) {
      if (inserted.has(id)) answers[at] = ok({ id, code });
      else if (wanted !== null) answers[at] = invalid('code', 'code-taken', { code });
    }
    open = open.filter(({ id, wanted }) => wanted === null && !inserted.has(id));
  }
  return answers;
}
