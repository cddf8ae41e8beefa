import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { mailSetting } from '@/lib/base/mail-setting';
import { disconnect } from '@/lib/database/client';
import { digestsDue } from '@/lib/digest/digests-due';
import { sendDueDigests } from '@/lib/digest/send-due-digests';
import { chooseDigest } from '@/lib/records/signal/choose-digest.command';
import { chooseDigestInput } from '@/lib/records/signal/choose-digest.input';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { mailSink } from '../support/mail-sink';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
});
afterAll(async () => {
  await admin.end();
  await disconnect();
});

// Monday, 6:30 and 5:30 in New York.
const monday = new Date('2026-07-20T10:30:00Z');
const early = new Date('2026-07-20T09:30:00Z');
const days = (count: number) => new Date(monday.getTime() + count * 86_400_000);

const choose = (who: keyof Growers & ('coordinator' | 'member'), wanted: 'yes' | 'no') =>
  runAs(people[who], chooseDigestInput, chooseDigest, { wanted });

async function settingsOf(options?: { refuse: boolean }) {
  const { letters, url } = await mailSink(options);
  const mail = mailSetting({ SMTP_URL: url, MAIL_FROM: 'pinset@example.org' });
  if (typeof mail !== 'object') throw new Error('the sink is a mail server');
  return { letters, mail };
}
const send = (mail: Awaited<ReturnType<typeof settingsOf>>['mail'], now: Date) =>
  sendDueDigests(mail, 'https://pinset.example', now);

describe('the weekly digest', () => {
  it('goes to nobody who has not chosen it, and members cannot choose it', async () => {
    expect(await digestsDue(monday)).toEqual([]);
    expect(await choose('member', 'yes')).toMatchObject({ kind: 'not-found' });
    await choose('coordinator', 'no');
    expect(await digestsDue(monday)).toEqual([]);
  });

  it('is sent once a week to a coordinator who chose it, in plain text and HTML', async () => {
    await choose('coordinator', 'yes');
    const { letters, mail } = await settingsOf();
    expect(await send(mail, monday)).toBe(1);
    expect(await send(mail, days(3))).toBe(0);
    expect(letters).toHaveLength(1);
    const [letter] = letters;
    expect(letter).toMatchObject({
      from: 'pinset@example.org',
      to: `${people.coordinator.personId}@example.org`,
    });
    expect(letter?.data).toContain(`Subject: ${people.coordinator.networkName}: nothing needs a look`);
    expect(letter?.data).toMatch(/Content-Type: text\/plain/);
    expect(letter?.data).toMatch(/Content-Type: text\/html/);
    expect(letter?.data).toContain('https://pinset.example/account/digest');
    expect(await send(mail, days(7))).toBe(1);
  });

  it('waits for six in the morning of Monday where the network is', async () => {
    const { mail } = await settingsOf();
    const nextEarly = new Date(early.getTime() + 14 * 86_400_000);
    expect(await send(mail, nextEarly)).toBe(0);
    expect(await send(mail, days(14))).toBe(1);
  });

  it('is sent once though two processes send at the same moment', async () => {
    const { letters, mail } = await settingsOf();
    const counts = await Promise.all([send(mail, days(21)), send(mail, days(21))]);
    expect(counts.toSorted()).toEqual([0, 1]);
    expect(letters).toHaveLength(1);
  });

  it('stays due while the mail server does not take it', async () => {
    const refusing = await settingsOf({ refuse: true });
    expect(await send(refusing.mail, days(28))).toBe(0);
    expect(await digestsDue(days(28))).toHaveLength(1);
    const { letters, mail } = await settingsOf();
    expect(await send(mail, days(28))).toBe(1);
    expect(letters).toHaveLength(1);
  });

  it('is written in the language of whoever reads it', async () => {
    await admin.query("update person set language = 'es', region = 'es-MX' where id = $1", [
      people.coordinator.personId,
    ]);
    const { letters, mail } = await settingsOf();
    expect(await send(mail, days(35))).toBe(1);
    expect(letters[0]?.data).toContain('nada que mirar');
  });

  it('ends with the membership', async () => {
    await admin.query('update membership set ended_at = now() where person_id = $1', [
      people.coordinator.personId,
    ]);
    expect(await digestsDue(days(42))).toEqual([]);
  });
});
