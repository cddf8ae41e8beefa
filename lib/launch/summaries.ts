/**
 * `npm run summaries -- --check | --rebuild`: compares what is kept of batches with what the records give, or works it
 * all out anew, network by network, in the database of DATABASE_OWNER_URL. Writers wait meanwhile, readers do not.
 */
import { parseArgs } from 'node:util';
import { connectTo } from '@/lib/database/startup-check';

const { values } = parseArgs({ options: { check: { type: 'boolean' }, rebuild: { type: 'boolean' } } });
/** So many differences are named; the rest are counted. */
const named = 20;

type Wrong = { what: string; place: string; kept: unknown; records: unknown };

if (values.check !== true && values.rebuild !== true) {
  console.log('usage: npm run summaries -- --check | --rebuild');
  process.exitCode = 2;
} else {
  const owner = await connectTo('DATABASE_OWNER_URL', process.env.DATABASE_OWNER_URL);
  try {
    const { rows: networks } = await owner.query<{ id: string }>('select id from app.network_ids() as id');
    let differences = 0;
    for (const { id } of networks) {
      if (values.rebuild) await owner.query('select app.rebuild_outcomes($1)', [id]);
      const { rows } = await owner.query<Wrong>(
        `select * from app.wrong_outcomes($1) union all select * from app.wrong_totals($1)
         union all select * from app.wrong_site_versions($1)`,
        [id],
      );
      for (const wrong of rows.slice(0, named)) console.log(id, JSON.stringify(wrong));
      differences += rows.length;
    }
    console.log(`${networks.length} networks: ${differences} rows differ from what the records give.`);
    process.exitCode = differences === 0 ? 0 : 1;
  } finally {
    await owner.end();
  }
}
