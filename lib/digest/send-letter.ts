import 'server-only';
import { createTransport } from 'nodemailer';
import type { MailSetting } from '@/lib/base/mail-setting';
import type { Letter } from './digest-letter';

/** A mail server that does not answer must not hold the transaction that records the letter. */
const patience = { connectionTimeout: 5000, greetingTimeout: 5000, socketTimeout: 8000 };

/** Hands a letter to the mail server. @throws when the server does not take it */
export async function sendLetter(
  { host, port, secure, auth, from }: MailSetting,
  to: string,
  letter: Letter,
): Promise<void> {
  const transport = createTransport({ host, port, secure, ...(auth ? { auth } : {}), ...patience });
  try {
    await transport.sendMail({
      ...letter,
      from: { name: 'Pinset', address: from },
      to,
      // Tells mail servers and holiday notices that nobody waits for an answer (RFC 3834, from memory).
      headers: { 'Auto-Submitted': 'auto-generated' },
    });
  } finally {
    transport.close();
  }
}
