import { readAs } from '@/lib/access/scoped-db';
import { getNotice } from '@/lib/records/lot-notice/get-notice.query';
import { listLotNotices } from '@/lib/records/lot-notice/list-lot-notices.query';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import { listStandingNotices } from '@/lib/records/lot-notice/list-standing-notices.query';
import { listToldLots } from '@/lib/records/lot-notice/list-told-lots.query';
import { listUnreadNotices } from '@/lib/records/lot-notice/list-unread-notices.query';
import {
  markNoticeReadInput,
  withdrawNoticeInput,
  writeNoticeInput,
} from '@/lib/records/lot-notice/lot-notice.input';
import { markNoticeRead } from '@/lib/records/lot-notice/mark-notice-read.command';
import { withdrawNotice } from '@/lib/records/lot-notice/withdraw-notice.command';
import { writeNotice } from '@/lib/records/lot-notice/write-notice.command';
import { command, type OperationRow } from './operation-rows';
import { arrange, type World } from './world';

const notice = ({ people, stock }: World) => ({
  ...{ lotKind: 'spawn-lot', lotId: stock.oysterSpawn, siteIds: [people.millLane] },
  ...{ whatHappened: 'Green bags', whatToDo: 'Look daily' },
});

async function written(world: World): Promise<string> {
  return (await arrange(world.people.coordinator, writeNoticeInput, writeNotice, notice(world))).id;
}

/** A query that is asked after a notice to Mill Lane was written, and has to name it. */
function asked(
  name: string,
  may: string,
  ask: (context: Parameters<typeof listUnreadNotices>[0], world: World, id: string) => Promise<unknown>,
): OperationRow {
  return {
    file: `records/lot-notice/${name}.query`,
    may,
    prepare: written,
    attempt: async (world, actor, id) => {
      const answer = await readAs(actor, (context) => ask(context, world, String(id)));
      return JSON.stringify(answer ?? null).includes(
        name === 'list-notice-sites' ? world.people.millLane : String(id),
      );
    },
  };
}

/** The coordinator writes notices; members of the sites they are told to read them, funders never. */
export const noticeRows: readonly OperationRow[] = [
  command('records/lot-notice/write-notice.command', 'y----', writeNoticeInput, writeNotice, notice),
  command(
    'records/lot-notice/withdraw-notice.command',
    'y----',
    withdrawNoticeInput,
    withdrawNotice,
    async (world) => ({ id: await written(world), revision: 1, reason: 'tried' }),
  ),
  command(
    'records/lot-notice/mark-notice-read.command',
    '-y---',
    markNoticeReadInput,
    markNoticeRead,
    async (world) => ({ noticeId: await written(world) }),
  ),
  asked('list-unread-notices', '-y---', (context) => listUnreadNotices(context)),
  asked('list-standing-notices', 'yy---', (context) => listStandingNotices(context)),
  asked('list-told-lots', 'y----', (context) => listToldLots(context)),
  asked('get-notice', 'yy---', (context, _world, id) => getNotice(context, id)),
  asked('list-lot-notices', 'yy---', (context, { stock }) =>
    listLotNotices(context, 'spawn-lot', stock.oysterSpawn),
  ),
  asked('list-notice-sites', 'y----', (context, { stock }) =>
    listNoticeSites(context, 'spawn-lot', stock.oysterSpawn),
  ),
];
