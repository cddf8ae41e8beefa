/**
 * Timings.
 *
 *   npm run bench -- stats            the mixed models beside R's lme4, and on a very large network
 *   npm run bench -- stats small      only beside lme4
 *   npm run bench -- stats large      only the very large network
 *   npm run bench -- pages            what pages read, in the large network of `npm run seed:scale`, in the database of
 *                                     DATABASE_URL; --email of another coordinator, --times N readings each,
 *                                     --url of a built server on the same database to time whole pages, too, and --pid of
 *                                     its process to tell its processor time
 *   npm run bench -- fits             one refit of a question in that network, cold and from where the last one ended: of
 *                                     methods, or with sites or losses of these; --from DATE of the batches, --email
 *   npm run bench -- report           a report of ten pages as a PDF, a workbook and an archive
 *   npm run bench -- import           tables of 100,000 rows brought in, beside a bare COPY of the same records; --rows N,
 *                                     --kind K of one kind only
 */
import { parseArgs } from 'node:util';
import { recordTableKinds } from '@/lib/growing/record-table-layout';
import { benchFits, fittedQuestion } from './bench-fits';
import { benchPages } from './bench-pages';
import { benchReport } from './bench-report';
import { benchStatistics } from './bench-statistics';
import { benchImport } from './import/bench-import';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    ...{
      email: { type: 'string' },
      times: { type: 'string' },
      url: { type: 'string' },
      pid: { type: 'string' },
    },
    ...{ rows: { type: 'string' }, kind: { type: 'string' }, from: { type: 'string' } },
  },
});
const [what, part] = positionals;
if (what === 'stats' && (part === undefined || part === 'small' || part === 'large')) {
  const within = benchStatistics(part);
  process.exitCode = within ? 0 : 1;
} else if (what === 'pages') {
  const { email = 'large@network.example', times = '20', url, pid } = values;
  const within = await benchPages({
    email,
    times: Number(times),
    url,
    pid: pid === undefined ? undefined : Number(pid),
  });
  process.exitCode = within ? 0 : 1;
} else if (what === 'fits') {
  const { email = 'large@network.example', from } = values;
  const question = fittedQuestion(part ?? 'methods');
  if (question === undefined) throw new Error('fits: methods, sites, losses or next');
  process.exitCode = (await benchFits({ email, from, question })) ? 0 : 1;
} else if (what === 'report') {
  process.exitCode = (await benchReport()) ? 0 : 1;
} else if (what === 'import') {
  const { rows = '100000', kind } = values;
  const only = recordTableKinds.find((one) => one === kind);
  if (kind !== undefined && only === undefined)
    throw new Error(`--kind: one of ${recordTableKinds.join(', ')}`);
  process.exitCode = (await benchImport(Number(rows), only)) ? 0 : 1;
} else {
  console.log(
    'usage: npm run bench -- stats [small | large] | report | fits [--from D] [--email E] | pages [--email E] [--times N] [--url U [--pid P]] | import [--rows N] [--kind K]',
  );
  process.exitCode = 2;
}
