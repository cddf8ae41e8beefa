import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';

/** Tables in whose rows no figure takes part: an answer to a signal, or a check of a table, must not have every model fitted anew. */
const besideTheFigures = [
  'signal_answer',
  'digest_choice',
  'intake_file',
  'api_token',
  'lot_notice',
  'lot_notice_site',
  'lot_notice_read',
  'report',
  'report_story',
  'report_picture',
  'report_link',
];

/**
 * The state that an answer rests on: the last line of the network's history, and the day at its sites, since batches enter
 * by date without a write. Two equal versions are the same records on the same day.
 */
export async function readDataVersion({ db, actor }: ReadContext, today: SiteDates): Promise<string> {
  const last = await db.history.findFirst({
    where: { networkId: actor.networkId, tableName: { notIn: besideTheFigures } },
    orderBy: { id: 'desc' },
    select: { id: true },
  });
  // Lines of the history are numbered as they are written, and a long transaction commits after later numbers were read.
  const counted = await db.outcomeVersion.findUnique({ where: { networkId: actor.networkId } });
  return [last?.id ?? 'none', counted?.version ?? 0, ...[...new Set(today.values())].sort()].join(' ');
}
