import { defineConfig, devices } from '@playwright/test';
import { freePort } from './lib/database/embedded/free-port';
import { findBrowser } from './lib/launch/find-browser';

// Set once by the first process that reads this file, and inherited by the workers and the server.
process.env.PINSET_TEST_PORT ??= String(await freePort(4200));
process.env.PINSET_SIGN_INS ??= `.pinset/test/browser-${process.env.PINSET_TEST_PORT}/sign-ins.json`;
process.env.CHROMIUM ??= await findBrowser();

// "localhost" as in NEXTAUTH_URL: for a browser 127.0.0.1 is another host with other cookies.
const baseURL = `http://localhost:${process.env.PINSET_TEST_PORT}`;

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  timeout: 60_000,
  reporter: [['list'], ['json', { outputFile: '.pinset/test/browser-results.json' }]],
  use: {
    ...devices['Desktop Chrome'],
    baseURL,
    screenshot: 'only-on-failure',
    // Recording every test slows all of them; whoever hunts a failure sets the variable.
    trace: process.env.PINSET_TRACE ? 'retain-on-failure' : 'off',
    launchOptions: {
      executablePath: process.env.CHROMIUM,
      args: [
        '--disable-gpu',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
      ],
    },
  },
  webServer: {
    // The condition makes modules of the server load: see runScript in lib/launch/run-step.ts.
    command: 'exec node --conditions=react-server lib/launch/browser-server.mjs',
    url: `${baseURL}/sign-in`,
    timeout: 900_000,
    stdout: 'pipe',
    gracefulShutdown: { signal: 'SIGTERM', timeout: 20_000 },
  },
});
