// Serves the demo network with reloading for developers: `npm run dev`.
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { register } = await import('tsx/esm/api');
register();
const { run } = await import('./shut-down.ts');
const { runDev } = await import('./run-dev.ts');
await run(runDev);
