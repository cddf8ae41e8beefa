import { describe, expect, it } from 'vitest';
import { startSettings } from '@/lib/launch/start-settings';

const good = {
  NEXTAUTH_SECRET: 'fh3kX0pQ2mZ8vB5tR7yL1wN4cD6gJ9sA',
  NEXTAUTH_URL: 'https://pinset.example/',
  DATABASE_URL: 'postgresql://pinset_app@db/pinset',
  DATABASE_OWNER_URL: 'postgresql://pinset_owner@db/pinset',
};

describe('the settings of npm start', () => {
  it('are read from the environment, with this machine and port 3000 where nothing is said', () => {
    expect(startSettings(good)).toEqual({
      databaseUrl: good.DATABASE_URL,
      ownerUrl: good.DATABASE_OWNER_URL,
      secret: good.NEXTAUTH_SECRET,
      url: 'https://pinset.example',
      host: '127.0.0.1',
      port: 3000,
    });
  });

  it('refuse a store for pictures that cannot be read, in one line', () => {
    const environment = { ...good, PHOTO_STORE: 's3://host/bucket' };
    expect(() => startSettings(environment)).toThrow(/^PHOTO_STORE is neither/);
    const store = { ...good, PHOTO_STORE: 's3://key:secret@host/pictures?region=eu-west-1' };
    expect(() => startSettings(store)).not.toThrow();
  });

  it('refuse a mail server without a sender, in one line', () => {
    expect(() => startSettings({ ...good, SMTP_URL: 'smtp://mail.example' })).toThrow(
      /^SMTP_URL and MAIL_FROM/,
    );
    const mail = { ...good, SMTP_URL: 'smtp://mail.example', MAIL_FROM: 'pinset@example.org' };
    expect(() => startSettings(mail)).not.toThrow();
  });

  it('need no database of their own', () => {
    const { databaseUrl, ownerUrl } = startSettings({
      ...good,
      DATABASE_URL: undefined,
      DATABASE_OWNER_URL: undefined,
    });
    expect([databaseUrl, ownerUrl]).toEqual([undefined, undefined]);
  });

  it.each([
    ['NEXTAUTH_SECRET', undefined, 'NEXTAUTH_SECRET is not set: make one with `openssl rand -base64 33`.'],
    ['NEXTAUTH_SECRET', 'secret', 'NEXTAUTH_SECRET is shorter than 32 characters: make one with'],
    ['NEXTAUTH_SECRET', 'abab'.repeat(10), 'NEXTAUTH_SECRET is easy to guess: make one with'],
    ['NEXTAUTH_URL', undefined, 'NEXTAUTH_URL is not set: give it the address people type'],
    ['NEXTAUTH_URL', 'pinset.example', 'NEXTAUTH_URL is not an address of the form https://pinset.example.'],
    [
      'NEXTAUTH_URL',
      'ftp://pinset.example',
      'NEXTAUTH_URL is not an address of the form https://pinset.example.',
    ],
    [
      'NEXTAUTH_URL',
      'https://pinset.example/app',
      'NEXTAUTH_URL is not an address of the form https://pinset.example.',
    ],
    [
      'DATABASE_OWNER_URL',
      undefined,
      'DATABASE_OWNER_URL is not set: give it the address with which migrations may',
    ],
    ['DATABASE_URL', undefined, "DATABASE_URL is not set: give it the address of the application's role"],
    ['PORT', '0', 'PORT is "0": give it a number from 1 to 65535.'],
    ['PORT', 'http', 'PORT is "http": give it a number from 1 to 65535.'],
  ])('refuse %s = %s in one plain line', (name, value, line) => {
    expect(() => startSettings({ ...good, [name]: value })).toThrow(line);
  });
});
