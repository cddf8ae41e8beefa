import { randomInt } from 'node:crypto';
import { erasePerson } from '@/lib/records/person/erase-person.command';
import { erasePersonInput } from '@/lib/records/person/erase-person.input';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { addSite } from '@/lib/records/site/add-site.command';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import { listLeftSites } from '@/lib/records/site/list-left-sites.query';
import { addSiteInput } from '@/lib/records/site/site.input';
import { newcomer } from '../support/newcomer';
import { command, type OperationRow, query } from './operation-rows';
import { arrange, type World } from './world';

/** Sites that leave are made for it, one an attempt, in Larkmoor. */
const leavingSite = async (world: World) =>
  arrange(world.people.coordinator, addSiteInput, addSite, {
    ...{ name: 'A field to leave', code: `GO-${randomInt(1_000_000)}`, kind: 'farm' },
    ...{ timeZone: 'America/New_York', trimDefault: 'as_picked' },
  });

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
  {
    ...command('records/site/leave-site.command', 'y----', leaveSiteInput, leaveSite, () => ({})),
    prepare: async (world) => ({
      ...(await leavingSite(world)),
      ...{ figures: 'counted', reason: 'tried', word: 'leave' },
    }),
  },
  query(
    'records/site/list-left-sites.query',
    'y----',
    async (context) => listLeftSites(context),
    (answer) => answer.length > 0,
  ),
];
