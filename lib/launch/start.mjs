// Serves the real thing, set up by the environment: `npm start`.
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { register } = await import('tsx/esm/api');
register();
const { run } = await import('./shut-down.ts');
const { runStart } = await import('./run-start.ts');
await run(runStart);
