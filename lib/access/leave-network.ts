import 'server-only';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { Person } from './actor';
import { failureOfError } from './failure-of-error';
import { asPersonIn } from './scoped-db';

/** `gone`: nothing of the person is left but their records' id; `left`: they go on in another network. */
export type Left = 'left' | 'gone';

/**
 * Takes the person out of the network, or, with '' for one who has none, out of Pinset: name, address, sign-in, sessions
 * and tokens are erased, records stay. Refused to the last coordinator of a network.
 * `shown`: the network that the person saw when they said so; refused when another one is open by now. Not found where none
 * is open though one is left to them.
 */
export async function leaveNetwork(person: Person, networkId: string, shown: string): Promise<Result<Left>> {
  if (shown !== networkId) return invalid('', 'another-network');
  try {
    const [row] = await asPersonIn(
      person.personId,
      networkId,
      (db) => db.$queryRaw<{ left: Left | null }[]>`
        select app.erase_person(${person.personId}::uuid) as "left"`,
    );
    return row?.left ? ok(row.left) : notFound;
  } catch (error) {
    const failure = failureOfError(error);
    if (failure === undefined) throw error;
    return failure;
  }
}
