import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import { asDate } from '../fields/stored-date';
import type { FindingInput } from './finding.input';
import { nameFoundUnits } from './name-units';

/** A finding that was judged, of a batch at its site. */
export type ReadyFinding = {
  readonly id: string;
  readonly batchId: string;
  readonly siteId: string;
  readonly input: FindingInput;
};

/** Inserts findings that were judged, and the units that they name. */
export async function insertFindings(
  context: WriteContext,
  findings: readonly ReadyFinding[],
): Promise<void> {
  const { actor, origin } = context;
  await insertRows(
    context,
    'finding',
    findings.map(({ input: { units, sign, stage, action, note, foundOn }, ...owner }) => ({
      networkId: actor.networkId,
      ...owner,
      ...{ foundOn: asDate(foundOn), units, sign, stage, action, note, origin },
      createdById: actor.personId,
    })),
  );
  for (const { input, ...owner } of findings) await nameFoundUnits(context, owner, input.unitNumbers);
}
