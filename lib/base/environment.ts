import { z } from 'zod';

const environmentInput = z.object({
  DATABASE_URL: z.string().startsWith('postgres'),
  NEXTAUTH_SECRET: z.string().min(32),
  NEXTAUTH_URL: z.string().url(),
});

/** The settings the application needs at run time; names the first wrong one in one plain line. */
export function environment(): z.infer<typeof environmentInput> {
  const parsed = environmentInput.safeParse(process.env);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  throw new Error(`Setting ${issue?.path.join('.')} is missing or wrong: ${issue?.message}`);
}
