import { z } from 'zod';

export const joinInput = z.object({
  name: z.string('missing').trim().min(1, 'missing').max(120, 'too-long'),
  email: z.string('missing').trim().toLowerCase().min(1, 'missing').pipe(z.email('email-invalid')),
  password: z.string('missing').min(1, 'missing').max(500, 'too-long'),
});

export const setupInput = joinInput.extend({
  networkName: z.string('missing').trim().min(1, 'missing').max(120, 'too-long'),
  networkCode: z
    .string('missing')
    .trim()
    .toLowerCase()
    .min(1, 'missing')
    .regex(/^[a-z0-9][a-z0-9-]{1,29}$/, 'code-form'),
  timeZone: z.string('missing').min(1, 'missing').refine(isZone, 'not-an-option'),
});

function isZone(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone.length > 0;
  } catch {
    return false;
  }
}
