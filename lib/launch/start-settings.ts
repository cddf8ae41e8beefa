import { mailSetting, wrongMail } from '@/lib/base/mail-setting';
import { photoStoreSetting, wrongPhotoStore } from '@/lib/base/photo-store-setting';
import { StartProblem } from '@/lib/database/start-problem';

/** What `npm start` is told by the environment. Without a database of its own it uses the embedded one. */
export type StartSettings = {
  databaseUrl: string | undefined;
  ownerUrl: string | undefined;
  secret: string;
  url: string;
  host: string;
  port: number;
};

const secretHint = 'make one with `openssl rand -base64 33`';

function secretFrom(secret: string | undefined): string {
  if (!secret) throw new StartProblem(`NEXTAUTH_SECRET is not set: ${secretHint}.`);
  if (secret.length < 32)
    throw new StartProblem(`NEXTAUTH_SECRET is shorter than 32 characters: ${secretHint}.`);
  if (new Set(secret).size < 10) throw new StartProblem(`NEXTAUTH_SECRET is easy to guess: ${secretHint}.`);
  return secret;
}

function urlFrom(url: string | undefined): string {
  if (!url)
    throw new StartProblem(
      'NEXTAUTH_URL is not set: give it the address people type, https://pinset.example.',
    );
  if (!URL.canParse(url) || !/^https?:$/.test(new URL(url).protocol) || new URL(url).pathname !== '/')
    throw new StartProblem('NEXTAUTH_URL is not an address of the form https://pinset.example.');
  return new URL(url).origin;
}

function portFrom(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65_536) return port;
  throw new StartProblem(`PORT is "${text}": give it a number from 1 to 65535.`);
}

/**
 * Reads the settings of `npm start`.
 *
 * @throws {StartProblem} with one plain line about the first setting that is missing, wrong or weak
 */
export function startSettings(environment: Record<string, string | undefined>): StartSettings {
  const { DATABASE_URL, DATABASE_OWNER_URL } = environment;
  if (DATABASE_URL && !DATABASE_OWNER_URL)
    throw new StartProblem(
      'DATABASE_OWNER_URL is not set: give it the address with which migrations may run.',
    );
  if (DATABASE_OWNER_URL && !DATABASE_URL)
    throw new StartProblem(
      "DATABASE_URL is not set: give it the address of the application's role, pinset_app.",
    );
  if (photoStoreSetting(environment.PHOTO_STORE) === 'wrong') throw new StartProblem(wrongPhotoStore);
  if (mailSetting(environment) === 'wrong') throw new StartProblem(wrongMail);
  return {
    databaseUrl: DATABASE_URL,
    ownerUrl: DATABASE_OWNER_URL,
    secret: secretFrom(environment.NEXTAUTH_SECRET),
    url: urlFrom(environment.NEXTAUTH_URL),
    host: environment.HOST ?? '127.0.0.1',
    port: portFrom(environment.PORT ?? '3000'),
  };
}
