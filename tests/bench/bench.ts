/**
 * Timings.
 *
 *   npm run bench -- stats            the mixed models beside R's lme4, and on a very large network
 *   npm run bench -- stats small      only beside lme4
 *   npm run bench -- stats large      only the very large network
 */
import { benchStatistics } from './bench-statistics';

const [what, part] = process.argv.slice(2);
if (what === 'stats' && (part === undefined || part === 'small' || part === 'large')) {
  const within = benchStatistics(part);
  process.exitCode = within ? 0 : 1;
} else {
  console.log('usage: npm run bench -- stats [small | large]');
  process.exitCode = 2;
}
