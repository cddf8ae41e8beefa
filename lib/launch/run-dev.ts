import { appSecret } from './app-secret';
import { generateClient } from './build-app';
import { holdDatabase } from './keep-serving';
import { dataFolder } from './project';
import { announce, choosePort } from './run-demo';
import { bin, runProgram } from './run-step';
import { prepareDemo } from './seed-demo';

/** `npm run dev`: the demo network under Next's development server, which reloads what is edited. */
export async function runDev(): Promise<number> {
  const folder = dataFolder('demo');
  await generateClient();
  const server = await holdDatabase(folder, 'development');
  const secret = appSecret(folder);
  await prepareDemo(server, folder, secret);
  const port = await choosePort();
  const url = `http://localhost:${port}`;
  announce(url, folder);
  return runProgram(bin('next'), ['dev', '--hostname', '127.0.0.1', '--port', String(port)], {
    DATABASE_URL: server.urls.app,
    NEXTAUTH_URL: url,
    NEXTAUTH_SECRET: secret,
  });
}
