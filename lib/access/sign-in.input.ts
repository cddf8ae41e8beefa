import { z } from 'zod';

export const signInInput = z.object({
  email: z.string({ error: 'missing' }).trim().min(1, 'missing').max(320, 'too-long'),
  password: z.string({ error: 'missing' }).min(1, 'missing').max(500, 'too-long'),
});
