import { readAs } from '@/lib/access/scoped-db';
import { agreeSharing } from '@/lib/records/sharing/agree-sharing.command';
import { agreeSharingInput } from '@/lib/records/sharing/agree-sharing.input';
import { getSharing } from '@/lib/records/sharing/get-sharing.query';
import { command, type OperationRow, query } from './operation-rows';

/** What a site shares is said by its members; the coordinator reads it and changes nothing. */
export const sharingRows: readonly OperationRow[] = [
  {
    ...command('records/sharing/agree-sharing.command', '-y---', agreeSharingInput, agreeSharing, () => ({})),
    prepare: async (world) => {
      const { coordinator, millLane } = world.people;
      const now = await readAs(coordinator, (context) => getSharing(context, millLane));
      return {
        id: millLane,
        revision: now?.revision ?? 0,
        withMembers: 'anonymous',
        withFunder: 'not_at_all',
      };
    },
  },
  query(
    'records/sharing/get-sharing.query',
    'yy---',
    (context, world) => getSharing(context, world.people.millLane),
    (answer) => answer !== undefined,
  ),
];
