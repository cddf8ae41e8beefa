import { erasePerson } from '@/lib/records/person/erase-person.command';
import { erasePersonInput } from '@/lib/records/person/erase-person.input';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { newcomer } from '../support/newcomer';
import { command, type OperationRow, query } from './operation-rows';

/** A person leaves by their own account; only the coordinator erases somebody else, who asked. */
export const leavingRows: readonly OperationRow[] = [
  {
    ...command('records/person/erase-person.command', 'y----', erasePersonInput, erasePerson, () => ({})),
    prepare: async ({ people }) => {
      const who = { name: 'Linden Crake', role: 'member', siteIds: [people.millLane] } as const;
      const { membershipId } = await newcomer(people.coordinator, who);
      return { id: membershipId, reason: 'asked for it', word: 'leave' };
    },
  },
  query(
    'records/person/get-leaving.query',
    'y----',
    (context, world) => getLeaving(context, world.people.member.membershipId),
    (answer) => answer !== undefined,
  ),
];
