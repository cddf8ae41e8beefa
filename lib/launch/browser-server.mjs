// Serves the built application with a demo network of its own, for the browser tests: see playwright.config.ts.
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { register } = await import('tsx/esm/api');
register();
const { run } = await import('./shut-down.ts');
const { runBrowserServer } = await import('./run-browser-server.ts');
await run(runBrowserServer);
