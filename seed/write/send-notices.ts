import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import {
  markNoticeReadInput,
  withdrawNoticeInput,
  writeNoticeInput,
} from '@/lib/records/lot-notice/lot-notice.input';
import { markNoticeRead } from '@/lib/records/lot-notice/mark-notice-read.command';
import { withdrawNotice } from '@/lib/records/lot-notice/withdraw-notice.command';
import { writeNotice } from '@/lib/records/lot-notice/write-notice.command';
import { truths } from '../story/truths';
import { inOneGo } from './in-one-go';

/**
 * The sites are told about the bad lot, and all but the first and the last member have read it; an earlier notice about a load
 * of straw turned out to be a mistake and was withdrawn.
 */
export async function sendNotices(coordinator: Actor, members: readonly Actor[]): Promise<void> {
  const { spawnLotId, substrateLotId, sites } = await readAs(coordinator, async (context) => {
    const bad = await context.db.spawnLot.findFirstOrThrow({ where: { code: truths.badLot.code } });
    const straw = await context.db.substrateLot.findFirstOrThrow({
      orderBy: [{ receivedOn: 'asc' }, { id: 'asc' }],
    });
    const choices = await listNoticeSites(context, 'spawn-lot', bad.id);
    return { spawnLotId: bad.id, substrateLotId: straw.id, sites: choices?.sites ?? [] };
  });
  const concerned = sites.filter(({ batches }) => batches > 0).map(({ id }) => id);
  const [somewhere] = concerned;
  if (somewhere === undefined) return;
  const notice = await inOneGo(coordinator, async (take) => {
    const mistaken = await take(writeNoticeInput, writeNotice, {
      ...{ lotKind: 'substrate-lot', lotId: substrateLotId, siteIds: [somewhere] },
      whatHappened: 'Two bales of this straw were wet through when they came.',
      whatToDo: 'Put wet bales aside and soak only dry ones.',
    });
    await take(withdrawNoticeInput, withdrawNotice, {
      ...{ id: mistaken.id, revision: 1 },
      reason: 'The wet bales were of the load before.',
    });
    return take(writeNoticeInput, writeNotice, {
      ...{ lotKind: 'spawn-lot', lotId: spawnLotId, siteIds: concerned },
      whatHappened:
        'Bags spawned with this lot turned green at nearly every site that used it, whatever the treatment. That is no proof of its cause.',
      whatToDo:
        'Start nothing with what is left of it, keep it apart, and look at beds that came from its bags when you water.',
    });
  });
  for (const member of members.slice(1, -1))
    if (member.siteIds.some((id) => concerned.includes(id)))
      await inOneGo(member, (take) => take(markNoticeReadInput, markNoticeRead, { noticeId: notice.id }));
}
