import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import type { Command } from '@/lib/access/run-command';
import { writeAs } from '@/lib/access/scoped-db';
import { readerLocale } from '@/lib/base/reader-locale';
import { ok } from '@/lib/base/result';

/** The story is invented, so every "is this right?" is answered with yes. */
class Everything extends Set<string> {
  override has(): boolean {
    return true;
  }
}

/** Runs one command with raw values, exactly as a form or a script would; a refusal ends the seeding. */
export type Take = <S extends z.ZodType, T>(
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
) => Promise<T>;

/** Several commands of one actor in one transaction; `now`: the instant at which the story has them done. */
export async function inOneGo<T>(
  actor: Actor,
  steps: (take: Take) => Promise<T>,
  now = new Date(),
): Promise<T> {
  const result = await writeAs(
    actor,
    { origin: 'seed', confirmed: new Everything(), now },
    async (context: WriteContext) => {
      const take: Take = async (schema, command, raw) => {
        const input = parseInput(schema, raw, readerLocale(actor));
        const answer = input.kind === 'ok' ? await command(context, input.value) : input;
        if (answer.kind !== 'ok')
          throw new Error(`${command.name} refused ${JSON.stringify(raw)}: ${JSON.stringify(answer)}`);
        return answer.value;
      };
      return ok(await steps(take));
    },
  );
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value;
}
