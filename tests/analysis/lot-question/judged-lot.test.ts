import { expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { storeResult } from '@/lib/analysis/fitted/stored-result';
import { readJudgedLot } from '@/lib/analysis/lot-question/lots-question';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';

const { superuser } = await testDatabase();

it('what the question of lots last said of a lot is read by the coordinator, and by nobody else', async () => {
  const { coordinator, member } = await growers(superuser);
  const lot = { lotId: 'pearl', verdict: 'loses-more', observed: 540, expected: 224 };
  const key = { question: 'lots', asked: '', siteId: null };
  const about = { dataVersion: '1', fittedAt: '2026-05-20T15:00:00.000Z' };
  const judged = (id: string, actor = coordinator) => readAs(actor, (context) => readJudgedLot(context, id));
  expect(await judged('pearl')).toBeUndefined();
  await readAs(coordinator, (context) =>
    storeResult(context, key, { ...about, result: { kind: 'judged', leftOut: 0, lots: [lot] } }),
  );
  expect(await judged('pearl')).toEqual({ judged: lot, fittedAt: about.fittedAt });
  expect(await judged('another')).toBeUndefined();
  expect(await judged('pearl', member)).toBeUndefined();
});
