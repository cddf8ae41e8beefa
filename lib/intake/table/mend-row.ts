import 'server-only';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { changeFile } from './settle';

const mend = z.object({
  line: z.number().int().positive(),
  cells: z.array(z.string().max(2_000)).max(200),
  /** What no column holds, by field. */
  said: z.record(z.string().regex(/^[a-z][A-Za-z\d]{0,40}$/), z.string().max(2_000)).default({}),
  confirmed: z.array(z.string().max(60)).max(20),
});

/** Keeps mended cells of one row; what came in the file stays beside them. */
export function mendRow(actor: Actor, id: string, raw: z.input<typeof mend>): Promise<Result<null>> {
  return changeFile(actor, id, async ({ db }) => {
    const input = mend.safeParse(raw);
    if (!input.success) return invalid('', 'too-long', { max: 2_000 });
    const { line, cells, said, confirmed } = input.data;
    if ([...cells, ...Object.values(said)].some((text) => text.includes('\0')))
      return invalid('', 'control-characters');
    const row = await db.intakeRow.findFirst({
      where: { fileId: id, line, state: { notIn: ['added', 'left_out'] } },
    });
    if (!row) return notFound;
    const mended = {
      ...Object.fromEntries(
        cells.flatMap((text, index) => (text === (row.cells[index] ?? '') ? [] : [[String(index), text]])),
      ),
      ...Object.fromEntries(Object.entries(said).filter(([, text]) => text !== '')),
    };
    await db.intakeRow.updateMany({
      where: { fileId: id, line, state: { notIn: ['added', 'left_out'] } },
      data: { mended, confirmed, state: 'unread' },
    });
    return ok(null);
  });
}
