// Installs, prepares and serves the demo network: `npm run demo`.
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { register } = await import('tsx/esm/api');
register();
const { run } = await import('./shut-down.ts');
const { runDemo } = await import('./run-demo.ts');
await run(runDemo);
