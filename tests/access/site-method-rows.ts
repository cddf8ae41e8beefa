import { readAs } from '@/lib/access/scoped-db';
import { chooseSiteMethods } from '@/lib/records/site-method/choose-site-methods.command';
import { chooseSiteMethodsInput } from '@/lib/records/site-method/choose-site-methods.input';
import { getSiteMethods } from '@/lib/records/site-method/get-site-methods.query';
import { command, type OperationRow, query } from './operation-rows';

/** What a site can do is said by its members and the coordinator. */
export const siteMethodRows: readonly OperationRow[] = [
  {
    ...command(
      'records/site-method/choose-site-methods.command',
      'yy---',
      chooseSiteMethodsInput,
      chooseSiteMethods,
      () => ({}),
    ),
    prepare: async (world) => {
      const { coordinator, millLane } = world.people;
      const now = await readAs(coordinator, (context) => getSiteMethods(context, millLane));
      return {
        id: millLane,
        revision: now?.revision ?? 0,
        methodIds: [world.stock.hotWater],
        reason: 'tried',
      };
    },
  },
  query(
    'records/site-method/get-site-methods.query',
    'yy---',
    (context, world) => getSiteMethods(context, world.people.millLane),
    (answer) => answer !== undefined,
  ),
];
