import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { StartProblem } from '../start-problem';

const passwords = z.object({ postgres: z.string(), pinset_owner: z.string(), pinset_app: z.string() });

/** The passwords of the embedded server's roles, by role. */
export type Passwords = z.infer<typeof passwords>;

const random = () => randomBytes(24).toString('base64url');

/** Reads the passwords kept beside the data (readable by its owner only), or makes them for a new cluster. */
export function passwordsOf(dataFolder: string): Passwords {
  const file = path.join(path.dirname(dataFolder), 'passwords.json');
  if (existsSync(file)) return passwords.parse(JSON.parse(readFileSync(file, 'utf8')));
  if (existsSync(dataFolder))
    throw new StartProblem(
      `${file} is missing, and without it the data in ${dataFolder} cannot be opened: put it back.`,
    );
  const made = { postgres: random(), pinset_owner: random(), pinset_app: random() };
  writeFileSync(file, JSON.stringify(made), { mode: 0o600 });
  return made;
}
