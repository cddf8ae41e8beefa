// Runs every check, in the order a person would want: `npm test`.
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { register } = await import('tsx/esm/api');
register();
const { run } = await import('./shut-down.ts');
const { runChecks } = await import('./run-checks.ts');
await run(runChecks);
